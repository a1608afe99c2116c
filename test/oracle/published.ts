/** What a published layout holds, as the reference page says it; all numbers are whole nanometres. */
export interface PublishedFloor {
  readonly floor: string
  readonly product: string
  readonly frame: { readonly east: number; readonly north: number }
  readonly area: { readonly rings: readonly Ring[]; readonly unsplit: readonly Ring[] }
  readonly courses: readonly {
    readonly course: number
    readonly low: number
    readonly high: number
    readonly order: number
  }[]
  readonly planks: readonly { readonly plank: number; readonly length: number }[]
  readonly pieces: readonly PublishedPiece[]
  readonly joints: readonly PublishedJoint[]
  readonly doorways: readonly {
    readonly doorway: string
    readonly from: number
    readonly to: number
    readonly low: number
    readonly high: number
  }[]
  readonly breaches: readonly PublishedBreach[]
}

export type Ring = readonly (readonly [number, number])[]

export interface PublishedPiece {
  readonly piece: number
  readonly course: number
  readonly plank: number
  readonly blank: number
  readonly ring: Ring
  readonly along: readonly [number, number]
  readonly across: readonly [number, number]
  readonly turned: boolean
}

export interface PublishedJoint {
  readonly course: number
  readonly at: number
  readonly low: number
  readonly high: number
  readonly leftPiece: number
  readonly rightPiece: number
  readonly parted: boolean
}

export interface PublishedBreach {
  readonly rule: string
  readonly value: number
  readonly limit: number
  readonly at: readonly [number, number]
  readonly pieces: readonly number[]
  readonly direction: string
}

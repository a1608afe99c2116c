import { afterAll, afterEach, beforeAll, expect, test, vi } from 'vitest'
import type { Command, Tools } from '../../client/src/commands/command.ts'

/** An address as the editor has them, as far as a drawing is saved to it. */
const place = {
  scheme: 'file',
  path: '/jobs/house.svg',
  with: ({ path }: { path: string }) => ({ path }),
  toString: () => 'file:///jobs/house.svg',
}

const editor = {
  Uri: { joinPath: () => place },
  commands: { executeCommand: vi.fn(async () => {}) },
  window: {
    visibleTextEditors: [],
    showSaveDialog: async () => place,
    showInformationMessage:
      vi.fn<(said: string, ...offers: string[]) => Promise<string | undefined>>(),
    showErrorMessage: vi.fn(),
  },
  workspace: {
    fs: { writeFile: vi.fn(), rename: async () => {}, delete: async () => {} },
  },
}

let command: Command
beforeAll(async () => {
  vi.doMock('vscode', () => editor)
  command = (await import('../../client/src/commands/export-drawing.ts')).EXPORT_DRAWING
})
afterAll(() => {
  vi.doUnmock('vscode')
})
afterEach(() => {
  vi.clearAllMocks()
})

/** With a server that has a drawing and a plan in front. */
async function save(): Promise<void> {
  const client = { isRunning: () => true, sendRequest: async () => ({ svg: '<svg/>' }) }
  const tools = { lifeline: { client }, plan: { inFront: place } } as unknown as Tools
  await command.run(tools)
}

const { commands, window, workspace } = editor

test('a drawing that is saved is said by its name, and opened where that is chosen', async () => {
  window.showInformationMessage.mockResolvedValue('Open')
  await save()
  await vi.waitFor(() => expect(commands.executeCommand).toHaveBeenCalledWith('vscode.open', place))
  expect(window.showInformationMessage.mock.calls).toEqual([
    ['The drawing is saved as house.svg.', 'Open'],
  ])
})

test('the command is done though nobody answers', async () => {
  window.showInformationMessage.mockReturnValue(new Promise(() => {}))
  await save()
  expect(window.showInformationMessage).toHaveBeenCalledOnce()
  expect(commands.executeCommand).not.toHaveBeenCalled()
})

test('one that is not saved is not said to be', async () => {
  workspace.fs.writeFile.mockRejectedValueOnce(new Error('The disk is full.'))
  await save()
  expect(window.showErrorMessage.mock.calls).toEqual([
    ['The drawing was not saved. The disk is full.'],
  ])
  expect(window.showInformationMessage).not.toHaveBeenCalled()
})

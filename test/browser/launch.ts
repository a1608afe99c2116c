import { type Browser, chromium } from 'playwright-core'
import { findBrowser } from './find-browser.ts'

/** Calls no one: all that a browser asks of its maker by itself is off. */
const QUIET = [
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
]

/** A browser without a window. Chromium's sandbox does not start as root. */
export function launchBrowser(): Promise<Browser> {
  const args = process.getuid?.() === 0 ? ['--no-sandbox', ...QUIET] : QUIET
  return chromium.launch({ executablePath: findBrowser(), args })
}

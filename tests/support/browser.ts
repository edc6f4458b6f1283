import { existsSync, mkdirSync, writeFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { chromium, type Browser } from 'playwright-core'

/** Not the package's own arguments: those switch web security and site isolation off. */
const ARGUMENTS = ['--no-sandbox', '--disable-gpu', '--disable-background-networking', '--no-first-run']

/**
 * Starts a browser: CHROMIUM from the environment, else the system's, else the one that npm brought (Linux x64), else an installed one.
 * @throws Error with one sentence where there is none
 */
export async function startBrowser(): Promise<Browser> {
  const own = process.env['CHROMIUM'] ?? (existsSync('/usr/bin/chromium') ? '/usr/bin/chromium' : undefined)
  if (own !== undefined) return chromium.launch({ executablePath: own, args: ARGUMENTS })
  if (process.platform === 'linux' && process.arch === 'x64') return chromium.launch({ executablePath: await packagedChromium(), args: ARGUMENTS })
  try {
    return await chromium.launch({ channel: 'chrome', args: ARGUMENTS })
  } catch (cause) {
    throw new Error('The browser tests need a Chromium: set CHROMIUM to the path of one.', { cause })
  }
}

async function packagedChromium(): Promise<string> {
  // It takes any file named `chromium` already in the temporary folder, of whatever version: it gets a folder of its own for each version.
  const require = createRequire(import.meta.url)
  const entry = require.resolve('@sparticuz/chromium')
  const root = entry.slice(0, entry.lastIndexOf('chromium') + 'chromium'.length)
  const { version } = require(join(root, 'package.json')) as { version: string }
  const folder = join(tmpdir(), `evenbore-chromium-${version}-${process.getuid?.() ?? 0}`)
  mkdirSync(folder, { recursive: true })
  const before = process.env['TMPDIR']
  process.env['TMPDIR'] = folder
  try {
    const { default: packaged, inflate, setupLambdaEnvironment } = await import('@sparticuz/chromium')
    // On a bare machine its libraries come into play only when told so.
    setupLambdaEnvironment(join(await inflate(join(root, 'bin', 'al2023.tar.br')), 'lib'))
    const path = await packaged.executablePath()
    process.env['FONTCONFIG_PATH'] = fontFolders(folder)
    return path
  } finally {
    if (before === undefined) delete process.env['TMPDIR']
    else process.env['TMPDIR'] = before
  }
}


/** The package's own list of font folders names /tmp/fonts; without a font, any page with a field to type in ends the browser. */
function fontFolders(folder: string): string {
  const at = join(folder, 'font-folders')
  mkdirSync(at, { recursive: true })
  const folders = [join(folder, 'fonts'), '/usr/share/fonts'].map((path) => `<dir>${path}</dir>`).join('')
  writeFileSync(join(at, 'fonts.conf'), `<?xml version="1.0"?><!DOCTYPE fontconfig SYSTEM "fonts.dtd"><fontconfig>${folders}<cachedir>${join(folder, 'font-cache')}</cachedir></fontconfig>`)
  return at
}

/**
 * Finds a Chromium for the browser tests, or installs one, and says which; and a renderer of PDF pages for the picture
 * tests, which are passed over where there is none. Run before the tests.
 */
import { execFileSync, spawnSync } from 'node:child_process'
import { existsSync } from 'node:fs'
import { pathToFileURL } from 'node:url'
import { chromium } from 'playwright'

const PLACES = ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome']

/** Path of a browser that is there already; null: none. */
export function findBrowser(): string | null {
  const own = chromium.executablePath()
  return [process.env.CHROMIUM, ...PLACES, own].find((path) => path && existsSync(path)) ?? null
}

const run = (command: string, args: readonly string[]): boolean => {
  console.log(`> ${command} ${args.join(' ')}`)
  try {
    execFileSync(command, args, { stdio: 'inherit' })
    return true
  } catch (error) {
    console.log(`  failed: ${error instanceof Error ? error.message : String(error)}`)
    return false
  }
}

const debian = process.getuid?.() === 0 && existsSync('/usr/bin/apt-get')
const INSTALL = ['install', '-y', '-qq', '--no-install-recommends']

function installBrowser(): void {
  if (debian && run('apt-get', ['update', '-qq']) && run('apt-get', [...INSTALL, 'chromium'])) return
  run('npx', ['playwright', 'install', 'chromium'])
}

function installRenderer(): void {
  const found = spawnSync('pdftoppm', ['-v']).error === undefined
  if (!found && debian && run('apt-get', ['update', '-qq'])) run('apt-get', [...INSTALL, 'poppler-utils'])
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  if (!findBrowser()) installBrowser()
  installRenderer()
  const found = findBrowser()
  console.log(
    found
      ? `Browser for the tests: ${found}`
      : 'No browser could be found or installed: the browser tests will fail.',
  )
  process.exit(found ? 0 : 1)
}

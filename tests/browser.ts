/** Finds a Chromium for the browser tests, or installs one, and says which. Run before the tests. */
import { execFileSync } from 'node:child_process'
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

function install(): void {
  const root = process.getuid?.() === 0
  if (root && existsSync('/usr/bin/apt-get')) {
    run('apt-get', ['update', '-qq'])
    if (run('apt-get', ['install', '-y', '-qq', '--no-install-recommends', 'chromium'])) return
  }
  run('npx', ['playwright', 'install', 'chromium'])
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  if (!findBrowser()) install()
  const found = findBrowser()
  console.log(
    found
      ? `Browser for the tests: ${found}`
      : 'No browser could be found or installed: the browser tests will fail.',
  )
  process.exit(found ? 0 : 1)
}

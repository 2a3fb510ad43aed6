// What a bare clone needs before anything else can run: the packages of the lock file, and a browser. Imports nothing but
// Node itself, because it runs before there is anything else.
import { execFileSync, spawnSync } from 'node:child_process'
import { existsSync, readFileSync, statSync } from 'node:fs'
import { fileURLToPath } from 'node:url'

export const root = fileURLToPath(new URL('..', import.meta.url))

const CHROMIUMS = [
  process.env.TILLSIDE_CHROMIUM,
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/snap/bin/chromium',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
]

const FIREFOXES = [
  process.env.TILLSIDE_FIREFOX,
  '/usr/bin/firefox-esr',
  '/usr/bin/firefox',
  '/Applications/Firefox.app/Contents/MacOS/firefox',
]

/** Installs the packages of the lock file unless they are there already. */
export function ensurePackages() {
  const installed = `${root}node_modules/.package-lock.json`
  const isFresh = existsSync(installed) && statSync(installed).mtimeMs >= statSync(`${root}package-lock.json`).mtimeMs
  if (isFresh) return
  say('Installing the packages of package-lock.json ...')
  run('npm', ['ci', '--no-audit', '--no-fund', '--loglevel=error'])
}

/** The path of a Chromium that loads unpacked extensions; installs one on Debian when run as root, else says how. */
export function ensureChromium() {
  const found = CHROMIUMS.find((path) => path && existsSync(path))
  if (found) return found
  if (isDebian() && process.getuid?.() === 0) {
    say('Installing Chromium from Debian ...')
    run('apt-get', ['update', '-qq'])
    run('apt-get', ['install', '-y', '-qq', '--no-install-recommends', 'chromium', 'fonts-liberation'])
    if (existsSync('/usr/bin/chromium')) return '/usr/bin/chromium'
  }
  say('Tillside needs Chromium, and found none. Install it and run this again:')
  say('  Debian, Ubuntu:  sudo apt-get install chromium')
  say('  macOS:           brew install --cask chromium')
  say('  elsewhere:       set TILLSIDE_CHROMIUM to the path of a Chromium')
  say('(Branded Chrome no longer loads an unpacked extension from the command line.)')
  process.exit(1)
}

/** The path of a Firefox; installs one on Debian when run as root, else says how. */
export function ensureFirefox() {
  const found = FIREFOXES.find((path) => path && existsSync(path))
  if (found) return found
  if (isDebian() && process.getuid?.() === 0) {
    say('Installing Firefox ESR from Debian ...')
    run('apt-get', ['update', '-qq'])
    run('apt-get', ['install', '-y', '-qq', '--no-install-recommends', 'firefox-esr'])
    if (existsSync('/usr/bin/firefox-esr')) return '/usr/bin/firefox-esr'
  }
  say('The tests of the guard run in Firefox too, and found none. Install it and run this again:')
  say('  Debian:     sudo apt-get install firefox-esr')
  say('  elsewhere:  set TILLSIDE_FIREFOX to the path of a Firefox')
  process.exit(1)
}

/** Runs a program in the project's folder, showing what it prints; ends this one when it fails. */
export function run(program, args) {
  const { status, error } = spawnSync(program, args, { cwd: root, stdio: 'inherit' })
  if (error) say(`${program} could not be started: ${error.message}`)
  if (status !== 0) process.exit(status ?? 1)
}

/** Builds the library and the extension. */
export function buildAll() {
  execFileSync(process.execPath, [`${root}scripts/build.mjs`], { cwd: root, stdio: 'inherit' })
}

export function say(text) {
  process.stdout.write(`${text}\n`)
}

function isDebian() {
  try {
    return /^ID(_LIKE)?=.*\b(debian|ubuntu)\b/m.test(readFileSync('/etc/os-release', 'utf8'))
  } catch {
    return false
  }
}

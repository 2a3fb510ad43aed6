// Builds the library (dist/library), the extension (dist/extension) and the same extension with a manifest for the demo
// shops on loopback (dist/demo). Usage: node scripts/build.mjs

import { execFileSync } from 'node:child_process'
import { cp, mkdir, readdir, readFile, rename, rm, writeFile } from 'node:fs/promises'
import { fileURLToPath } from 'node:url'
import { build } from 'vite'
import { noteBundled, notices } from './third-party.mjs'

const root = fileURLToPath(new URL('..', import.meta.url))
const at = (path) => fileURLToPath(new URL(`../${path}`, import.meta.url))
// All is made beside dist and takes its place at the end: a build that fails leaves the last good one.
const next = at('dist.next')
const out = `${next}/extension`

await rm(next, { recursive: true, force: true })
const compiler = [
  at('node_modules/typescript/bin/tsc'),
  '-p',
  at('tsconfig.library.json'),
  '--outDir',
  `${next}/library`,
]
execFileSync(process.execPath, compiler, { stdio: 'inherit' })

const tsx = at('node_modules/tsx/dist/cli.mjs')
execFileSync(process.execPath, [tsx, at('scripts/write-schema.ts'), `${next}/library/book-file.schema.json`], {
  stdio: 'inherit',
})
execFileSync(process.execPath, [tsx, at('scripts/reference.ts'), `${next}/library`], {
  stdio: ['ignore', 'ignore', 'inherit'],
})

// Markup is never made of text here: the one place in a library that could is left out of the build.
const noInnerHtml = {
  name: 'no-inner-html',
  transform(code, id) {
    if (!/[\\/]preact[\\/]dist[\\/]preact\./.test(id)) return null
    const without = code.replace(/\(\w+\.innerHTML=\w+\.__html\)/g, '0')
    if (without === code) throw new Error(`${id} sets innerHTML in a way this build does not know.`)
    return { code: without, map: null }
  },
}
const bundled = new Set()
const plugins = [noInnerHtml, noteBundled(bundled)]
const worker = { plugins: () => [noteBundled(bundled)] }
const shared = { root, configFile: false, logLevel: 'warn', publicDir: false, plugins, worker }
const jsx = { oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } } }

// The pages share chunks; each of the scripts below is one file, as the browser's injection needs it.
await build({
  ...shared,
  ...jsx,
  base: './',
  build: {
    outDir: out,
    emptyOutDir: true,
    target: 'es2023',
    modulePreload: false,
    assetsInlineLimit: 0,
    rolldownOptions: { input: [at('popup/popup.html'), at('src/desk/desk.html'), at('src/guard/panel/panel.html')] },
  },
})
await script('src/background/worker.ts', 'worker.js', 'es')
await script('src/guard/gate.ts', 'gate.js', 'iife')
await script('src/guard/languages.ts', 'languages.js', 'iife')
await script('src/guard/reader.ts', 'reader.js', 'iife')
await script('src/guard/mark.ts', 'mark.js', 'iife')
await lexicons()

await cp(at('src/ui/icons'), `${out}/icons`, { recursive: true, filter: (path) => !/\.(svg|ts|mjs)$/.test(path) })
await messages()
await cp(at('LICENSE'), `${out}/LICENSE`)
await writeFile(`${out}/THIRD-PARTY-NOTICES.txt`, notices(bundled))
const manifest = JSON.parse(await readFile(at('manifest.json'), 'utf8'))
await json(`${out}/manifest.json`, manifest)

// The same files for Firefox, whose manifest names no service worker.
await cp(out, `${next}/firefox`, { recursive: true })
const { service_worker: _, ...background } = manifest.background
await json(`${next}/firefox/manifest.json`, { ...manifest, background })

await cp(out, `${next}/demo`, { recursive: true })
await json(`${next}/demo/manifest.json`, demoManifest(manifest))

await rm(at('dist'), { recursive: true, force: true })
await rename(next, at('dist'))

async function script(input, fileName, format) {
  await build({
    ...shared,
    build: {
      outDir: out,
      emptyOutDir: false,
      target: 'es2023',
      rolldownOptions: { input: at(input), output: { format, entryFileNames: fileName, codeSplitting: false } },
    },
  })
}

/** One small script per language: the lexicons are plain data, so each is its JSON, put where the reader finds it. */
async function lexicons() {
  const { lexicons } = await import(`${next}/library/checkout/lexicon/index.js`)
  await mkdir(`${out}/lexicons`, { recursive: true })
  for (const lexicon of lexicons) {
    const code = `(globalThis.tillsideLexicons ??= []).push(${JSON.stringify(lexicon)})\n`
    await writeFile(`${out}/lexicons/${lexicon.language}.js`, code)
  }
}

/** The browser wants one message file per language: ours of every domain, and the sentences of the engine. */
async function messages() {
  const { englishSentences } = await import(`${next}/library/book/sentences.en.js`)
  const { planSentences } = await import(`${next}/library/plan/sentences.en.js`)
  for (const language of await readdir(at('src/locales'))) {
    const texts = {}
    for (const name of await readdir(at(`src/locales/${language}`))) {
      Object.assign(texts, JSON.parse(await readFile(at(`src/locales/${language}/${name}`), 'utf8')))
    }
    // English, the engine's own language, has its sentences there; the others in `sentences.json`.
    if (language === 'en') {
      for (const [key, message] of Object.entries({ ...englishSentences, ...planSentences })) texts[key] = { message }
    }
    // Browsers write a region with an underscore: pt_BR.
    const folder = `${out}/_locales/${language.replace('-', '_')}`
    await mkdir(folder, { recursive: true })
    await json(`${folder}/messages.json`, texts)
  }
}

/** No headless browser can answer a permission prompt, so the demo's manifest holds the loopback shops from the start. */
function demoManifest(manifest) {
  const shops = ['http://*.localhost/*']
  const [resource] = manifest.web_accessible_resources
  return {
    ...manifest,
    host_permissions: shops,
    web_accessible_resources: [{ ...resource, matches: [...resource.matches, ...shops] }],
  }
}

function json(path, value) {
  return writeFile(path, `${JSON.stringify(value, null, 2)}\n`)
}

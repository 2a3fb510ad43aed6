// The library as its users get it: packed by npm, looked over by publint and are-the-types-wrong, unpacked in a folder of its
// own with nothing beside it but the packages it names, compiled against under two ways of resolving, run, and measured.
import { spawnSync } from 'node:child_process'
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { checkPackage, createPackageFromTarballData } from '@arethetypeswrong/core'
import { publint } from 'publint'
import { formatMessage } from 'publint/utils'
import { examples } from './examples.ts'
import { sizesFit } from './library-sizes.ts'
import { packLibrary } from './pack-library.ts'

const root = fileURLToPath(new URL('..', import.meta.url))

/** Ways TypeScript looks for packages (are-the-types-wrong looks the others over). The first one's output is run. */
const RESOLUTIONS = [
  { module: 'NodeNext', moduleResolution: 'NodeNext' },
  { module: 'ESNext', moduleResolution: 'Bundler' },
]

// ES modules only is a decision: TypeScript's `node10` knows no exports map, and `require` takes ES modules since 20.19.
const EXPECTED = new Set(['node10 NoResolution', 'node16-cjs CJSResolvesToESM'])

const folder = mkdtempSync(join(tmpdir(), 'tillside-packed-'))
try {
  const tarball = packLibrary(folder)
  const bytes = readFileSync(tarball)
  let well = await isWellFormed(bytes)
  well = (await hasRightTypes(bytes)) && well
  install(tarball)
  well = compiles() && runs() && well
  well = (await sizesFit(folder)) && well
  process.exitCode = well ? 0 : 1
} finally {
  rmSync(folder, { recursive: true, force: true })
}

async function isWellFormed(bytes: Buffer): Promise<boolean> {
  const tarball = new Uint8Array(bytes).buffer
  const { messages, pkg } = await publint({ pack: { tarball }, strict: true })
  for (const message of messages) console.error(`publint: ${formatMessage(message, pkg)}`)
  return messages.length === 0
}

async function hasRightTypes(bytes: Buffer): Promise<boolean> {
  const result = await checkPackage(createPackageFromTarballData(new Uint8Array(bytes)))
  if (!result.types) {
    console.error('are-the-types-wrong: the package has no types.')
    return false
  }
  const { problems } = result
  const wrong = problems.filter((problem) => {
    const where = 'resolutionKind' in problem ? problem.resolutionKind : 'everywhere'
    return !EXPECTED.has(`${where} ${problem.kind}`)
  })
  for (const problem of wrong) console.error(`are-the-types-wrong: ${JSON.stringify(problem)}`)
  return wrong.length === 0
}

/** What npm does with the tarball, without asking a registry: unpacked, with the packages it says it needs beside it. */
function install(tarball: string): void {
  const modules = join(folder, 'node_modules')
  mkdirSync(join(modules, 'tillside'), { recursive: true })
  must('tar', ['-xzf', tarball, '-C', join(modules, 'tillside'), '--strip-components=1'])
  const { dependencies }: { readonly dependencies: Readonly<Record<string, string>> } = JSON.parse(
    readFileSync(join(modules, 'tillside/package.json'), 'utf8'),
  )
  for (const name of Object.keys(dependencies)) {
    mkdirSync(dirname(join(modules, name)), { recursive: true })
    symlinkSync(join(root, 'node_modules', name), join(modules, name), 'junction')
  }
  writeFileSync(join(folder, 'package.json'), '{ "type": "module" }\n')
}

function compiles(): boolean {
  cpSync(join(root, 'tests/consumer/consumer.ts'), join(folder, 'src/consumer.ts'))
  for (const [n, { code }] of examples().entries()) writeFileSync(join(folder, `src/example-${n}.ts`), code)
  return RESOLUTIONS.every((resolution, n) => {
    const compilerOptions = { ...resolution, target: 'ES2022', lib: ['ES2022', 'DOM'], types: [], strict: true }
    const config = { compilerOptions: { ...compilerOptions, rootDir: 'src', outDir: `out-${n}` }, include: ['src'] }
    writeFileSync(join(folder, 'tsconfig.json'), JSON.stringify(config))
    const compiler = [join(root, 'node_modules/typescript/bin/tsc'), '-p', folder]
    const compiled = spawnSync(process.execPath, compiler, { stdio: 'inherit' }).status === 0
    if (!compiled) console.error(`The library's types do not hold under ${resolution.moduleResolution}.`)
    return compiled
  })
}

function runs(): boolean {
  return examples().every(({ guide, title, prints }, n) => {
    const ran = spawnSync(process.execPath, [join(folder, `out-0/example-${n}.js`)], { encoding: 'utf8' })
    const well = ran.status === 0 && ran.stdout.trim() === prints.join('\n')
    if (!well) console.error(`${guide}, "${title}" printed:\n${ran.stdout}${ran.stderr}`)
    return well
  })
}

function must(program: string, args: readonly string[]): void {
  const { status, error } = spawnSync(program, args, { stdio: 'inherit' })
  if (status !== 0) throw new Error(`${program} failed: ${error?.message ?? status}`)
}

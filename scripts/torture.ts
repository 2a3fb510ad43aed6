// npm run torture: kills the browser and stops the worker at random moments under a stream of entries, and looks each
// time whether every acknowledged entry is there, none is half there, and the balances are those of the entries.
// TILLSIDE_KILLS=300 and TILLSIDE_SEED=1 are the defaults.

import { runTorture } from '../tests/browser/torture.ts'

const kills = Number(process.env.TILLSIDE_KILLS ?? 300)
const seed = Number(process.env.TILLSIDE_SEED ?? 1)
const outcome = await runTorture({ kills, seed, onKill: (n) => n % 25 === 0 && console.error(`${n} of ${kills}`) })
console.log(JSON.stringify({ what: 'entries under kills', kills, seed, ...outcome }, null, 2))
process.exitCode = outcome.lost === 0 && outcome.strange === 0 && outcome.wrongBalances === 0 ? 0 : 1

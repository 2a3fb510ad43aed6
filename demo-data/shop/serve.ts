// Serves the demo shops by hand until Ctrl+C: npx tsx demo-data/shop/serve.ts [port]
import { checkoutPath, shopNames, startDemoShop, strangePaths } from './server.ts'

const port = Number(process.argv[2] ?? 4180)
const shop = await startDemoShop({ port, delayMs: 900 })
const baskets = { fernhill: 'seed-mix:2,trowel:1', lunaire: 'carnet:2,encre:1', corvid: 'evening-piano:1' }
for (const name of shopNames) {
  console.log(shop.url(name))
  console.log(`  ${shop.url(name, checkoutPath(name, baskets[name]))}`)
}
for (const path of strangePaths) console.log(shop.url('fernhill', path))
console.log('Ctrl+C ends it.')

process.once('SIGINT', () => {
  void shop.close()
})

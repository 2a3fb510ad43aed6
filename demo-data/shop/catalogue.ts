import type { Product, ShopFacts, ShopName } from './model.ts'

// GST (TPS) 5 % and QST (TVQ) 9.975 % are the rates in force in Canada and Quebec; from memory.
const GST = 5000
const QST = 9975

const fernhillProducts: readonly Product[] = [
  { id: 'seed-mix', name: 'Meadow seed mix', note: 'Sixteen wild flowers, 20 g', group: 'seeds', cents: 415 },
  { id: 'alliums', name: 'Allium bulbs', note: 'Twenty, for autumn planting', group: 'seeds', cents: 1450 },
  { id: 'beans', name: 'Runner bean seeds', note: 'Scarlet flowers, 40 seeds', group: 'seeds', cents: 525 },
  { id: 'trowel', name: 'Ash-handled trowel', note: 'Forged steel', group: 'tools', cents: 1860, oldCents: 2200 },
  { id: 'gloves', name: 'Goatskin gloves', note: 'Soft, thorn-proof, size M', group: 'tools', cents: 2490 },
  { id: 'shears', name: 'Hedge shears', note: 'Wavy blades, 25 cm', group: 'tools', cents: 5430 },
  { id: 'fork', name: 'Border fork', note: 'Four tines, for small hands', group: 'tools', cents: 6800, oldCents: 7900 },
  { id: 'twine', name: 'Jute twine', note: 'Green, 100 m', group: 'growing', cents: 685 },
  { id: 'pots', name: 'Terracotta pots', note: 'Set of six, 14 cm', group: 'growing', cents: 3240 },
  { id: 'watering-can', name: 'Watering can', note: 'Nine litres, brass rose', group: 'growing', cents: 4675 },
  { id: 'cold-frame', name: 'Cedar cold frame', note: '120 × 60 cm', group: 'growing', cents: 28900 },
  { id: 'glasshouse', name: 'Lean-to glasshouse', note: 'Two metres, tempered', group: 'growing', cents: 63900 },
]

const lunaireProducts: readonly Product[] = [
  { id: 'carte', name: 'Carte «\u00a0Lune rousse\u00a0»', note: 'Gravure, 10 × 15 cm', group: 'papier', cents: 415 },
  { id: 'carnet', name: 'Carnet cousu', note: '160 pages, couverture de lin', group: 'papier', cents: 2150 },
  { id: 'papier', name: 'Papier à lettres vergé', note: '50 feuilles, 100 g', group: 'papier', cents: 2840 },
  { id: 'enveloppes', name: 'Enveloppes doublées', note: '25, intérieur bleu nuit', group: 'papier', cents: 1975 },
  { id: 'encre', name: 'Encre bleu nuit', note: 'Flacon de 50 ml', group: 'ecriture', cents: 1790 },
  { id: 'cire', name: 'Cire à cacheter', note: 'Quatre bâtons, or pâle', group: 'ecriture', cents: 1260 },
  { id: 'plume', name: 'Stylo plume Périgée', note: 'Plume moyenne, corps ivoire', group: 'ecriture', cents: 16400 },
  { id: 'secretaire', name: 'Secrétaire de voyage', note: 'Noyer, serrure à clé', group: 'ecriture', cents: 123450 },
]

const corvidProducts: readonly Product[] = [
  { id: 'heron-waltz', name: 'Heron Waltz', note: 'Ilse Ravndal', group: 'piano, single sheet', cents: 415 },
  { id: 'evening-piano', name: 'The Evening Piano Book', note: 'Odile Vance', group: 'piano, 30 pieces', cents: 4625 },
  { id: 'left-hand', name: 'Studies for the Left Hand', note: 'T. Okonjo', group: 'piano, 24 studies', cents: 2875 },
  { id: 'reed-duets', name: 'Ten Reed Duets', note: 'Mathis Orlow', group: 'two clarinets', cents: 1980 },
  { id: 'night-ferry', name: 'Night Ferry', note: 'Ilse Ravndal', group: 'string quartet, parts', cents: 7240 },
  { id: 'manuscript', name: 'Manuscript Paper', note: 'Twelve staves', group: '60 sheets', cents: 980 },
  { id: 'winter-choir', name: 'Winter Choir', note: 'T. Okonjo', group: 'SATB, 30 copies', cents: 18600 },
  { id: 'chamber-works', name: 'Complete Chamber Works', note: 'Odile Vance', group: 'twelve volumes', cents: 63850 },
]

/**
 * What each shop sells, its ways of sending and its taxes. All names are invented.
 *
 * Known totals: Corvid `evening-piano:1` by post is exactly 55.90 (46.25 + 6.99 + 2.66).
 */
export const shops: Readonly<Record<ShopName, ShopFacts>> = {
  fernhill: {
    title: 'Fernhill Garden Supply',
    language: 'en-CA',
    products: fernhillProducts,
    shipping: [
      { id: 'standard', label: 'Standard, 3 to 5 days', cents: 895, freeFromCents: 7500 },
      { id: 'express', label: 'Express, next working day', cents: 1650 },
    ],
    taxes: [{ label: 'GST 5 %', perHundredThousand: GST }],
    coupons: [{ code: 'MULCH5', cents: 500, fromCents: 2500 }],
  },
  lunaire: {
    title: 'Papeterie Lunaire',
    language: 'fr-CA',
    products: lunaireProducts,
    shipping: [
      { id: 'poste', label: 'Par la poste, 3 à 5 jours', cents: 980 },
      { id: 'messager', label: 'Par messager, demain', cents: 1840 },
      { id: 'boutique', label: 'Retrait à la boutique', cents: 0 },
    ],
    taxes: [
      { label: 'TPS 5 %', perHundredThousand: GST },
      { label: 'TVQ 9,975 %', perHundredThousand: QST },
    ],
    coupons: [],
  },
  corvid: {
    title: 'Corvid Sheet Music',
    language: 'en-CA',
    products: corvidProducts,
    shipping: [
      { id: 'post', label: 'Flat parcel by post', cents: 699 },
      { id: 'courier', label: 'Courier, tomorrow', cents: 1450 },
    ],
    taxes: [{ label: 'GST 5 %', perHundredThousand: GST }],
    coupons: [],
  },
}

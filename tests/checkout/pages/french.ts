import type { ShopPage } from './page.ts'

// Invented shops: La Cabane à Laine (Québec), Verger des Quatre Vents (France), Papeterie Alpenrose (Switzerland).
export const french: readonly ShopPage[] = [
  {
    name: 'a Québec table with both taxes and the sign behind the amount',
    url: 'https://cabane-laine.example/caisse/paiement',
    lang: 'fr-CA',
    body: `<h1>Paiement</h1><table>
      <tr><td>Sous-total</td><td>80,00 $</td></tr><tr><td>Livraison</td><td>9,50 $</td></tr>
      <tr><td>TPS (5 %)</td><td>4,48 $</td></tr><tr><td>TVQ (9,975 %)</td><td>8,93 $</td></tr>
      <tr><td>Total</td><td>102,91 $</td></tr></table>
      <input autocomplete="cc-number"><button>Payer maintenant</button><button>Appliquer le code promo</button>`,
    stage: 'checkout',
    total: '102.91 CAD',
    placeOrder: ['Payer maintenant'],
    parts: ['items 80.00', 'shipping 9.50', 'tax 4.48', 'tax 8.93'],
  },
  {
    name: 'gross with the tax it contains below',
    url: 'https://verger.example/commande',
    lang: 'fr-FR',
    body: `<section><p>Total produits TTC <b>40,00 €</b></p><p>Frais de port TTC <b>5,90 €</b></p><p>Réduction <b>- 4,00 €</b></p>
      <p>Total TTC <strong>41,90 €</strong></p><p>dont TVA 20 % <b>6,98 €</b></p></section>
      <form><label><input type="checkbox"> J’accepte les conditions générales de vente</label><button>Commander avec obligation de paiement</button></form>`,
    stage: 'checkout',
    total: '41.90 EUR',
    placeOrder: ['Commander avec obligation de paiement'],
    parts: ['items 40.00', 'shipping 5.90', 'discount -4.00'],
  },
  {
    name: 'before and after tax: the net sum is not what is paid',
    url: 'https://verger.example/paiement',
    lang: 'fr',
    body: `<dl><dt>Total HT</dt><dd>50,00 €</dd><dt>TVA</dt><dd>10,00 €</dd><dt>Net à payer</dt><dd>60,00 €</dd></dl>
      <label><input type="radio" name="paiement" checked> Carte bancaire</label><button>Valider et payer</button>`,
    stage: 'checkout',
    total: '60.00 EUR',
    placeOrder: ['Valider et payer'],
  },
  {
    name: 'a cart whose link says "order"',
    url: 'https://verger.example/panier',
    lang: 'fr',
    body: `<h1>Mon panier</h1><ul><li><a href="/pommes">Caisse de pommes</a> <select name="quantite"><option>1</option><option selected>3</option></select> <span>12,00 €</span> <b>36,00 €</b></li></ul>
      <p>Plus que 14,00 € pour profiter de la livraison gratuite</p><p>Total : <b>36,00 €</b></p><a href="/commande">Commander</a>`,
    stage: 'cart',
    total: '36.00 EUR',
    placeOrder: [],
    items: ['3 Caisse de pommes 36.00'],
  },
  {
    name: 'the last step of a shop that says only "commander"',
    url: 'https://verger.example/commande/validation',
    lang: 'fr-FR',
    body: `<h1>Vérifiez votre commande</h1><div><div>Sous-total</div><div>36,00 €</div></div><div><div>Livraison</div><div>6,00 €</div></div>
      <div><div>Total de la commande</div><div>42,00 €</div></div><label><input type="checkbox" checked> J'ai lu les CGV</label><button>Commander</button>`,
    stage: 'checkout',
    total: '42.00 EUR',
    placeOrder: ['Commander'],
  },
  {
    name: 'Swiss francs, rounded to five',
    url: 'https://alpenrose.example/fr/caisse',
    lang: 'fr-CH',
    body: `<table><tr><td>Articles</td><td>CHF 52.93</td></tr><tr><td>Arrondi</td><td>CHF -0.03</td></tr><tr><td>Montant à payer</td><td>CHF 52.90</td></tr></table>
      <input autocomplete="cc-number"><button>Payer 52.90 CHF</button>`,
    stage: 'checkout',
    total: '52.90 CHF',
    placeOrder: ['Payer 52.90 CHF'],
    parts: ['items 52.93', 'other -0.03'],
  },
  {
    name: 'a confirmation with narrow no-break spaces and a number with zeros in front',
    url: 'https://verger.example/merci',
    lang: 'fr-FR',
    body: `<h1>Merci pour votre commande !</h1><p>Votre numéro de commande : <strong>0000815</strong></p><p>Référence de paiement : <b>771200</b></p>
      <p>Total : <b>1 042,00 €</b></p>`,
    stage: 'confirmation',
    total: '1042.00 EUR',
    orderNumber: '0000815',
  },
  {
    name: 'shipping still to be calculated',
    url: 'https://cabane-laine.example/panier',
    lang: 'fr-CA',
    body: `<h1>Panier</h1><div>Sous-total <b>80,00 $</b></div><div>Livraison <span>Calculée à la prochaine étape</span></div><button>Passer à la caisse</button>`,
    stage: 'cart',
    total: null,
    parts: ['items 80.00'],
  },
  {
    name: 'French words on a page that says it is English',
    url: 'https://verger.example/commande/paiement',
    lang: 'en-US',
    body: `<div><span>Sous-total</span><span>36,00 €</span></div><div><span>Livraison</span><span>6,00 €</span></div><div><span>Montant à régler</span><span>42,00 €</span></div>
      <input autocomplete="cc-number"><button>Payer ma commande</button>`,
    stage: 'checkout',
    total: '42.00 EUR',
    placeOrder: ['Payer ma commande'],
  },
]

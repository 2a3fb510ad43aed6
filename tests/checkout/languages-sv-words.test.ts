import { describe, expect, it } from 'vitest'
import { controlKind } from '../../src/checkout/controls.ts'
import { meaningOf } from '../../src/checkout/label.ts'
import { lexicons } from '../../src/checkout/lexicon/index.ts'
import { vocabularyOf } from '../../src/checkout/vocabulary.ts'
import orderButton from '../published/eu-order-button.json' with { type: 'json' }

// What a person would say these labels and buttons of Nordic and Estonian shops mean. Common practice, no source, save for
// the wording of Directive 2011/83/EU, Article 8(2), which is read from tests/published/eu-order-button.json.
const labels: Readonly<Record<string, Readonly<Record<string, readonly string[]>>>> = {
  sv: {
    payable: ['Att betala:', 'Totalt att betala inkl. moms', 'Kvar att betala efter presentkort'],
    grandTotal: ['Totalsumma (inkl. moms)', 'Ordersumma', 'Totalbelopp inkl. frakt'],
    total: ['Totalt', 'Summa inkl. moms', 'Totalt (3 varor)'],
    items: ['Delsumma exkl. moms', 'Varor (3 st)', 'Summa varor'],
    net: ['Totalt exkl. moms', 'Summa före moms', 'Netto'],
    shipping: ['Frakt', 'Fraktkostnad DHL', 'Frakt inkl. moms', 'Leverans till ombud'],
    tax: ['Moms 25%', 'Moms (25 %)', 'Total moms'],
    discount: ['Rabatt', 'Totalrabatt', 'Rabattkod SOMMAR', 'Kampanjrabatt', 'Total rabatt'],
    included: ['varav moms', 'Varav moms 25%', 'Inkl. moms', 'Moms ingår'],
    aside: [
      'Fri frakt från',
      'Du sparar totalt',
      'Tidigare lägsta pris',
      'Kvar till fri frakt',
      'Jfr-pris',
      'Saldo på presentkort',
      'Delbetala från',
    ],
    fee: ['Fakturaavgift', 'Expeditionsavgift'],
    rounding: ['Öresavrundning'],
    dueNow: ['Att betala idag'],
    credit: ['Presentkort', 'Tillgodokvitto'],
  },
  da: {
    payable: ['At betale', 'Beløb til betaling', 'I alt til betaling'],
    grandTotal: ['Samlet beløb', 'Ordretotal', 'Totalbeløb inkl. moms'],
    total: ['I alt', 'I alt inkl. moms', 'Total (2 varer)'],
    items: ['Subtotal ekskl. moms', 'Varer i alt', 'Varer (2 stk.)'],
    net: ['I alt ekskl. moms', 'Total før moms'],
    shipping: ['Fragt', 'Levering til pakkeshop', 'Fragtgebyr', 'Leveringsgebyr'],
    tax: ['Moms (25%)', 'Moms 25 %'],
    discount: ['Rabat', 'Mængderabat', 'Samlet rabat', 'Rabatkode: TE'],
    included: ['Heraf moms', 'Inkl. moms', 'Moms udgør heraf'],
    aside: ['Gratis fragt over', 'Du sparer i alt', 'Førpris', 'Spar', 'Tilbage på gavekortet', 'Vejl. pris'],
    fee: ['Kortgebyr', 'Ekspeditionsgebyr'],
    rounding: ['Øreafrunding'],
    dueNow: ['At betale i dag'],
    credit: ['Gavekort', 'Anvendt gavekort'],
  },
  nb: {
    payable: ['Å betale', 'Sum å betale inkl. mva', 'Til betaling'],
    grandTotal: ['Totalsum', 'Ordresum', 'Totalpris inkl. mva.'],
    total: ['Totalt', 'Sum inkl. mva', 'Totalt (2 varer)', 'Sum'],
    items: ['Delsum eks. mva', 'Sum varer', 'Varer (2 stk)'],
    net: ['Totalt eks. mva', 'Sum uten mva', 'Netto'],
    shipping: ['Frakt', 'Fraktkostnad', 'Levering hjem'],
    tax: ['MVA 25 %', 'mva. (25%)', 'Merverdiavgift'],
    discount: ['Rabatt', 'Kampanjerabatt', 'Total rabatt'],
    included: ['Herav mva', 'Inkl. mva.', 'Hvorav mva 25%'],
    aside: ['Fri frakt over', 'Du sparer', 'Før-pris', 'Igjen til fri frakt', 'Delbetaling fra', 'Veil. pris'],
    fee: ['Fakturagebyr', 'Ekspedisjonsgebyr'],
    rounding: ['Øreavrunding'],
    dueNow: ['Å betale nå'],
    credit: ['Gavekort'],
  },
  fi: {
    payable: ['Maksettavaa', 'Maksettava yhteensä', 'Maksettavaa yhteensä (sis. alv)'],
    grandTotal: ['Loppusumma', 'Tilauksen summa', 'Kokonaishinta (sis. ALV)', 'Yhteensä verollinen'],
    total: ['Yhteensä', 'Yhteensä sis. alv', 'Summa', 'Yhteensä (3 tuotetta)', 'Summa alennuksen jälkeen'],
    items: ['Välisumma', 'Tuotteet yhteensä', 'Tuotteet (3 kpl)', 'Välisumma ilman veroa'],
    net: ['Yhteensä ilman alv', 'Veroton yhteensä', 'Veroton hinta'],
    shipping: ['Toimituskulut', 'Toimitus: Posti', 'Toimitusmaksu', 'Postikulut', 'Rahtikulut', 'Kotiinkuljetus'],
    tax: ['ALV 25,5 %', 'Arvonlisävero', 'Alv'],
    discount: ['Alennus', 'Kampanja-alennus', 'Alennuskoodi KESÄ', 'Alennukset yhteensä'],
    included: ['Sis. ALV', 'Sisältää alv:n 25,5 %', 'josta ALV', 'ALV:n osuus'],
    aside: [
      'Ilmainen toimitus yli',
      'Säästät yhteensä',
      'Norm.',
      'Lahjakortin saldo',
      'Osamaksulla alkaen',
      'Hinta ennen alennusta',
    ],
    fee: ['Palvelumaksu', 'Laskutuslisä'],
    rounding: ['Pyöristys'],
    dueNow: ['Maksetaan nyt'],
    credit: ['Lahjakortti', 'Käytetty hyvitys'],
  },
  et: {
    payable: ['Tasuda', 'Kokku tasuda', 'Tasumisele kuulub'],
    grandTotal: ['Kogusumma', 'Tellimuse summa', 'Kokku KM-ga', 'Kokku koos käibemaksuga', 'Lõppsumma'],
    total: ['Kokku', 'Summa', 'Kokku (3 toodet)'],
    items: ['Vahesumma', 'Tooted kokku', 'Kauba summa', 'Vahesumma km-ta'],
    net: ['Kokku km-ta', 'Summa ilma käibemaksuta', 'Käibemaksuta summa'],
    shipping: ['Tarne', 'Tarnekulu', 'Transpordikulu', 'Saatmiskulu', 'Kohaletoimetamine', 'Omniva pakiautomaat'],
    tax: ['KM 24%', 'Käibemaks 24%', 'Käibemaks'],
    discount: ['Soodustus', 'Allahindlus', 'Sooduskood SUVI', 'Kliendisoodustus'],
    included: ['sh käibemaks', 'sh KM 24%', 'Sisaldab käibemaksu'],
    aside: [
      'Tasuta tarne alates',
      'Säästad',
      'Tavahind',
      'Kinkekaardi jääk',
      'Kuumakse alates',
      'Puudu tasuta tarnest',
    ],
    fee: ['Teenustasu', 'Pakendamine'],
    rounding: ['Ümardamine'],
    dueNow: ['Tasuda kohe'],
    credit: ['Kinkekaart'],
  },
  is: {
    payable: ['Til greiðslu', 'Samtals til greiðslu', 'Upphæð til greiðslu m/vsk'],
    grandTotal: ['Heildarverð', 'Heildarupphæð með VSK', 'Samtals m/vsk'],
    total: ['Samtals', 'Samtals með afslætti', 'Alls'],
    items: ['Millisamtala', 'Vörur', 'Undirsamtala án VSK'],
    net: ['Samtals án vsk', 'Verð án vsk.'],
    shipping: ['Sendingarkostnaður', 'Sendingargjald', 'Heimsending', 'Afhending: Pósturinn', 'Sendingarmáti'],
    tax: ['VSK 24%', 'VSK', 'Virðisaukaskattur (24%)'],
    discount: ['Afsláttur', 'Magnafsláttur', 'Afsláttarkóði SUMAR'],
    included: ['Þar af VSK', 'þ.a. vsk', 'Með vsk'],
    aside: ['Frí heimsending yfir', 'Þú sparar', 'Verð áður', 'Eftirstöðvar gjafabréfs', 'Inneign'],
    fee: ['Þjónustugjald', 'Seðilgjald'],
    rounding: ['Aurajöfnun'],
    dueNow: ['Til greiðslu núna'],
    credit: ['Gjafabréf', 'Notuð inneign'],
  },
}
const controls: Readonly<Record<string, Readonly<Record<string, readonly string[]>>>> = {
  sv: {
    pays: [
      'Betala',
      'Betala 398 kr',
      'Slutför köp',
      'Betala med Swish',
      'Godkänn och betala',
      'Beställ & betala',
      'Lägg order',
      'Jag godkänner och betalar',
    ],
    buys: ['Köp', 'Köp nu'],
    completes: ['Beställ', 'Slutför beställning', 'Boka nu'],
    other: [
      'Fortsätt till betalning',
      'Betala senare',
      'Köp igen',
      'Se mina köp',
      'Ta bort',
      'Fortsätt handla',
      'Ångra köp',
      'Visa varukorg',
      'Prenumerera på nyhetsbrev',
      'Godkänn alla cookies',
      'Köp presentkort',
      'Spara',
    ],
    addToCart: ['Lägg i varukorgen', 'Lägg i kundvagn'],
    toCheckout: ['Till kassan', 'Gå till kassan'],
    vague: ['Bekräfta', 'Skicka'],
  },
  da: {
    pays: ['Betal', 'Betal 399,00 kr.', 'Gennemfør køb', 'Godkend og betal', 'Afgiv bestilling', 'Betal med MobilePay'],
    buys: ['Køb', 'Køb nu'],
    completes: ['Bestil', 'Bekræft ordre', 'Book nu'],
    other: [
      'Gå til betaling',
      'Fortsæt til betaling',
      'Betal senere',
      'Køb igen',
      'Fjern',
      'Fortsæt med at handle',
      'Fortryd køb',
      'Se kurv',
      'Tilmeld nyhedsbrev',
      'Accepter alle',
    ],
    addToCart: ['Læg i kurv', 'Tilføj til kurv'],
    toCheckout: ['Til kassen', 'Gå til kassen'],
    vague: ['Bekræft', 'Send'],
  },
  nb: {
    pays: [
      'Betal',
      'Betal kr 398,00',
      'Fullfør kjøp',
      'Bekreft og betal',
      'Betal med Vipps',
      'Legg inn bestilling',
      'Send bestilling',
    ],
    buys: ['Kjøp', 'Kjøp nå'],
    completes: ['Bestill', 'Fullfør bestilling', 'Bekreft ordre'],
    other: [
      'Gå til betaling',
      'Fortsett til betaling',
      'Betal senere',
      'Kjøp igjen',
      'Fjern',
      'Fortsett å handle',
      'Angre kjøp',
      'Se handlekurv',
      'Godta alle',
    ],
    addToCart: ['Legg i handlekurv', 'Legg til i handlekurven'],
    toCheckout: ['Til kassen', 'Gå til kassen'],
    vague: ['Bekreft', 'Send inn'],
  },
  fi: {
    pays: [
      'Maksa',
      'Maksa 45,60 €',
      'Tilaa ja maksa',
      'Hyväksy ja maksa',
      'Lähetä tilaus',
      'Maksa tilaus',
      'Vahvista tilaus ja maksa',
      'Tilaa (sisältää maksuvelvollisuuden)',
    ],
    buys: ['Osta', 'Osta nyt'],
    completes: ['Tilaa', 'Vahvista tilaus', 'Varaa nyt'],
    other: [
      'Siirry maksamaan',
      'Jatka maksuun',
      'Maksa myöhemmin',
      'Osta uudelleen',
      'Poista',
      'Jatka ostoksia',
      'Tilaa uutiskirje',
      'Peruuta tilaus',
      'Näytä ostoskori',
      'Hyväksy kaikki evästeet',
      'Tilaushistoria',
    ],
    addToCart: ['Lisää ostoskoriin', 'Lisää koriin'],
    toCheckout: ['Kassalle', 'Siirry kassalle'],
    vague: ['Vahvista', 'Hyväksy'],
  },
  et: {
    pays: ['Maksa', 'Maksa 45,60 €', 'Telli ja maksa', 'Esita tellimus', 'Kinnitan ja maksan', 'Maksa kaardiga'],
    buys: ['Osta', 'Maksma'],
    completes: ['Telli', 'Kinnita tellimus', 'Vormista tellimus'],
    other: [
      'Edasi maksma',
      'Maksa hiljem',
      'Osta uuesti',
      'Eemalda',
      'Jätka ostlemist',
      'Telli uudiskiri',
      'Vaata ostukorvi',
      'Nõustun kõigiga',
    ],
    addToCart: ['Lisa ostukorvi', 'Lisa korvi'],
    toCheckout: ['Kassasse', 'Mine kassasse'],
    vague: ['Kinnita', 'Saada'],
  },
  is: {
    pays: ['Greiða', 'Greiða 5.240 kr.', 'Staðfesta og greiða', 'Ljúka við kaup', 'Senda pöntun', 'Borga með korti'],
    buys: ['Kaupa', 'Kaupa núna', 'Ganga frá kaupum'],
    completes: ['Panta', 'Staðfesta pöntun', 'Ganga frá pöntun'],
    other: [
      'Áfram í greiðslu',
      'Greiða síðar',
      'Kaupa aftur',
      'Fjarlægja',
      'Halda áfram að versla',
      'Skoða körfu',
      'Samþykkja allt',
      'Hætta við',
    ],
    addToCart: ['Setja í körfu', 'Bæta í körfu'],
    toCheckout: ['Í afgreiðslu', 'Áfram í afgreiðslu'],
    vague: ['Staðfesta', 'Senda'],
  },
}

const everyLanguage = vocabularyOf(lexicons)

describe.each(Object.keys(labels))('words: %s', (language) => {
  const own = vocabularyOf(lexicons.filter((lexicon) => lexicon.language === language))
  const cases = (table: Readonly<Record<string, readonly string[]>> | undefined) =>
    Object.entries(table ?? {}).flatMap(([kind, texts]) => texts.map((text) => [text, kind] as const))

  it.each(cases(labels[language]))('the label "%s" says %s', (text, kind) => {
    expect([meaningOf(text, own), meaningOf(text, everyLanguage)]).toEqual([kind, kind])
  })

  it.each(cases(controls[language]))('the button "%s" says %s', (text, kind) => {
    expect([controlKind(text, own), controlKind(text, everyLanguage)]).toEqual([kind, kind])
  })
})

const rows = orderButton.languages.filter(({ lang }) => Object.keys(labels).includes(lang))

describe('order buttons that the EU accepts', () => {
  it('has rows for Swedish, Danish, Finnish and Estonian', () => {
    expect(rows.map(({ lang }) => lang).sort()).toEqual(['da', 'et', 'fi', 'sv'])
  })

  it.each(
    rows.flatMap((row) =>
      [row.directive_words, ...row.national.map(({ text }) => text)].map((text) => [row.lang, text] as const),
    ),
  )('%s: "%s"', (language, text) => {
    const own = vocabularyOf(lexicons.filter((lexicon) => lexicon.language === language))
    expect(['pays', 'buys']).toContain(controlKind(text, own))
  })
})

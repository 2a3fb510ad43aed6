import type { StatementLineKind } from '../statement-line.ts'

/** What a column of a bank's CSV may hold. */
export type CsvRole =
  | 'date'
  | 'valueDate'
  | 'paidOn'
  | 'amount'
  | 'out'
  | 'in'
  | 'direction'
  | 'balance'
  | 'currency'
  | 'name'
  | 'text'
  | 'reference'
  | 'fee'
  | 'originalAmount'
  | 'originalCurrency'
  | 'rate'
  | 'status'
  | 'account'
  | 'otherAccount'
  | 'kind'

/**
 * Words of header cells, folded (small letters, no accents), from general knowledge of many banks' languages, no source:
 * a hint beside what the column holds, never the proof. A phrase counts wherever it stands in the cell as whole words.
 */
// biome-ignore format: a table
export const headerWords: Readonly<Record<CsvRole, readonly string[]>> = {
  date: ['date', 'posted', 'post date', 'posting date', 'posted date', 'posted on', 'booking date', 'booked', 'datum', 'buchung', 'buchungstag', 'buchungsdatum', 'date operation', 'date d operation', 'date de comptabilisation', 'date comptable', 'fecha', 'fecha operacion', 'data', 'data operazione', 'data contabile', 'boekdatum', 'data ksiegowania', 'data operacji', 'bokforingsdag', 'bokforingsdatum', 'bogforingsdato', 'bokfort dato', 'dato', 'kirjauspaiva', 'datum zauctovani', 'data movimento', 'data lancamento', 'konyveles datuma', 'tarih', 'paivamaara', 'pvm'],
  valueDate: ['value date', 'value', 'valuta', 'valutadatum', 'wertstellung', 'wertstellungstag', 'wertstellungsdatum', 'date valeur', 'date de valeur', 'fecha valor', 'data valuta', 'rentedatum', 'data waluty', 'valor', 'data valor', 'valutadag', 'valutadato', 'rentedato', 'arvopaiva', 'erteknap', 'valor tarihi', 'effective date', 'settlement date'],
  paidOn: ['transaction date', 'trans date', 'purchase date', 'kaufdatum', 'umsatzdatum', 'transaktionsdatum', 'belegdatum', 'date achat', 'date d achat', 'date de transaction', 'fecha compra', 'data acquisto', 'transactiedatum', 'data transakcji', 'transaktionsdato', 'kopdatum', 'ostopaiva'],
  amount: ['amount', 'betrag', 'umsatz', 'montant', 'importe', 'importo', 'bedrag', 'kwota', 'belopp', 'belob', 'belop', 'summa', 'maara', 'castka', 'osszeg', 'valor', 'montante', 'tutar', 'suma', 'transaction amount', 'amount in account currency', 'quantity', 'cantidad'],
  out: ['debit', 'debits', 'debit amount', 'withdrawal', 'withdrawals', 'paid out', 'money out', 'out', 'outgoing', 'payments', 'spent', 'charge', 'charges', 'soll', 'belastung', 'lastschrift', 'ausgang', 'ausgaben', 'ausgabe', 'abgang', 'depense', 'depenses', 'cargo', 'cargos', 'addebito', 'addebiti', 'uscite', 'uscita', 'dare', 'af', 'uit', 'obciazenia', 'wydatki', 'uttag', 'ut', 'ud', 'debito', 'debet', 'terheles', 'borc', 'cikan', 'debe', 'vydaje'],
  in: ['credit', 'credits', 'credit amount', 'deposit', 'deposits', 'paid in', 'money in', 'in', 'incoming', 'received', 'haben', 'gutschrift', 'eingang', 'einnahmen', 'einnahme', 'zugang', 'recette', 'recettes', 'abono', 'abonos', 'accredito', 'accrediti', 'entrate', 'entrata', 'avere', 'bij', 'uznania', 'wplywy', 'insattning', 'inn', 'ind', 'credito', 'kredit', 'jovairas', 'alacak', 'giren', 'haber', 'prijmy'],
  direction: ['debit credit', 'credit debit', 'dr cr', 'cr dr', 'd c', 'c d', 's h', 'soll haben', 'af bij', 'bij af', 'direction', 'sign', 'vorzeichen', 'sens', 'signe', 'signo', 'segno', 'strana', 'debit credit indicator', 'indicator', 'credit debit indicator'],
  balance: ['balance', 'running balance', 'closing balance', 'balance after', 'saldo', 'kontostand', 'saldo nach buchung', 'solde', 'saldo contabile', 'saldo na transactie', 'saldo po operacji', 'stan konta', 'zustatek', 'egyenleg', 'bakiye', 'sald', 'disponible', 'saldo final'],
  currency: ['currency', 'ccy', 'wahrung', 'waehrung', 'devise', 'moneda', 'divisa', 'valuta', 'munt', 'muntsoort', 'waluta', 'moeda', 'mena', 'devizanem', 'para birimi', 'doviz', 'valutta', 'account currency'],
  name: ['name', 'payee', 'merchant', 'merchant name', 'counterparty', 'counterparty name', 'beneficiary', 'recipient', 'payer', 'sender', 'paid to', 'shop', 'empfanger', 'begunstigter', 'auftraggeber', 'zahlungsempfanger', 'zahlungspflichtiger', 'name zahlungsbeteiligter', 'beguenstigter', 'handler', 'beneficiaire', 'tiers', 'commercant', 'contrepartie', 'beneficiario', 'comercio', 'ordenante', 'controparte', 'esercente', 'tegenpartij', 'naam', 'naam tegenpartij', 'odbiorca', 'nadawca', 'kontrahent', 'mottagare', 'avsandare', 'modtager', 'mottaker', 'saaja', 'maksaja', 'protistrana', 'nazev protiuctu', 'partner', 'favorecido', 'who'],
  text: ['description', 'details', 'narrative', 'memo', 'particulars', 'transaction description', 'remittance', 'remittance information', 'purpose', 'message', 'note', 'notes', 'text', 'verwendungszweck', 'zweck', 'buchungsdetails', 'beschreibung', 'buchungstext', 'libelle', 'detail', 'communication', 'motif', 'concepto', 'descripcion', 'observaciones', 'descrizione', 'causale', 'omschrijving', 'mededelingen', 'mededeling', 'tytul', 'opis', 'opis operacji', 'beskrivning', 'beskrivelse', 'meddelande', 'tekst', 'viesti', 'selite', 'popis', 'zprava', 'kozlemeny', 'megjegyzes', 'descricao', 'historico', 'aciklama', 'extended details', 'additional information'],
  reference: ['reference', 'transaction id', 'transaction reference', 'id', 'ref', 'reference number', 'bank reference', 'unique id', 'referenz', 'kundenreferenz', 'referencia', 'riferimento', 'referentie', 'referens', 'reference operation', 'referencja', 'viite', 'check number', 'cheque number', 'check', 'cheque', 'end to end'],
  fee: ['fee', 'fees', 'commission', 'bank charges', 'gebuhr', 'gebuhren', 'entgelt', 'spesen', 'frais', 'comision', 'commissione', 'kosten', 'prowizja', 'avgift', 'gebyr', 'poplatek'],
  originalAmount: ['original amount', 'foreign amount', 'amount in foreign currency', 'foreign currency amount', 'betrag in fremdwahrung', 'fremdwahrungsbetrag', 'originalbetrag', 'ursprungsbetrag', 'montant d origine', 'montant devise', 'importe original', 'importe divisa', 'importo originale', 'oorspronkelijk bedrag', 'kwota oryginalna', 'originalbelopp', 'local amount', 'merchant amount', 'transaction currency amount'],
  originalCurrency: ['original currency', 'foreign currency', 'transaction currency', 'fremdwahrung', 'originalwahrung', 'devise d origine', 'moneda original', 'divisa originale', 'oorspronkelijke valuta', 'waluta oryginalna', 'local currency', 'merchant currency'],
  rate: ['exchange rate', 'rate', 'wechselkurs', 'umrechnungskurs', 'kurs', 'taux', 'taux de change', 'tipo de cambio', 'cambio', 'tasso di cambio', 'wisselkoers', 'koers', 'vaxelkurs', 'vekselkurs', 'fx rate', 'conversion rate'],
  status: ['status', 'state', 'zustand', 'etat', 'estado', 'stato', 'tila', 'stav', 'cleared', 'pending'],
  account: ['account', 'account number', 'account no', 'iban', 'konto', 'kontonummer', 'auftragskonto', 'iban auftragskonto', 'compte', 'numero de compte', 'cuenta', 'conto', 'rekening', 'rekeningnummer', 'own account', 'card', 'card number', 'kartennummer', 'numero konta', 'numer rachunku', 'conta', 'cislo uctu', 'szamlaszam', 'hesap'],
  otherAccount: ['counterparty account', 'counterparty iban', 'counter account', 'tegenrekening', 'iban zahlungsbeteiligter', 'kontonummer iban', 'empfanger iban', 'beneficiary account', 'bic', 'swift', 'sort code', 'protiucet', 'compte beneficiaire', 'blz', 'glaubiger id', 'mandatsreferenz', 'bankleitzahl', 'bic zahlungsbeteiligter'],
  kind: ['type', 'transaction type', 'category', 'code', 'umsatzart', 'transaktionstyp', 'art', 'kategorie', 'type operation', 'categorie', 'tipo', 'categoria', 'soort', 'mutatiesoort', 'typ', 'typ operacji', 'rodzaj', 'typ transakcji', 'tapahtumalaji', 'laji', 'tur'],
}

/** A header cell without case, accents and marks. */
export function foldWords(text: string): string {
  return text
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/ß/g, 'ss')
    .replace(/ø/g, 'o')
    .replace(/[æœ]/g, 'ae')
    .replace(/ł/g, 'l')
    .replace(/đ/g, 'd')
    .replace(/ı/g, 'i')
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim()
}

/** How well a header cell names a role: 3 when it is the phrase, up to 2 when it holds it, 0 when not. */
export function roleScore(folded: string, role: CsvRole): number {
  let best = 0
  for (const phrase of headerWords[role]) {
    if (folded === phrase) return 3
    if (` ${folded} `.includes(` ${phrase} `)) best = Math.max(best, 1 + phrase.length / Math.max(folded.length, 1))
    else if (phrase.length > 5 && folded.includes(phrase))
      best = Math.max(best, phrase.length / Math.max(folded.length, 1))
  }
  return best
}

/** What a direction column writes for money that goes out and that comes in. */
export const directionWords = {
  out: [
    'd',
    'dr',
    'db',
    'dbit',
    'debit',
    'debet',
    'debito',
    's',
    'soll',
    'af',
    'out',
    'money out',
    'withdrawal',
    '-',
    'belastung',
    'lastschrift',
    'ausgang',
    'sortie',
    'cargo',
    'uscita',
    'uit',
    'outgoing',
    'u',
    'wydatek',
  ],
  in: [
    'c',
    'cr',
    'crdt',
    'credit',
    'credito',
    'kredit',
    'h',
    'haben',
    'bij',
    'in',
    'money in',
    'deposit',
    '+',
    'gutschrift',
    'eingang',
    'entree',
    'abono',
    'entrata',
    'incoming',
    'i',
    'wplyw',
  ],
} as const

/** What a status column writes for a line that is not booked yet. */
export const pendingWords: readonly string[] = [
  'pending',
  'authorised',
  'authorized',
  'hold',
  'vorgemerkt',
  'vormerkung',
  'ausstehend',
  'offen',
  'en attente',
  'en cours',
  'pendiente',
  'in sospeso',
  'non contabilizzato',
  'in behandeling',
  'gereserveerd',
  'oczekujaca',
  'reserverad',
  'reserveret',
  'reservert',
  'varaus',
  'pendente',
  'beklemede',
  'fuggoben',
  'cekajici',
  'not booked',
  'unposted',
  'processing',
]

/** What banks write in a column for the kind of a line, as whole words; the first that fits counts. */
// biome-ignore format: a table
export const kindWords: readonly { readonly kind: StatementLineKind; readonly words: readonly string[] }[] = [
  { kind: 'fee', words: ['fee', 'fees', 'service charge', 'gebuhr', 'gebuhren', 'entgelt', 'frais', 'comision', 'commissione', 'kosten', 'avgift', 'prowizja'] },
  { kind: 'interest', words: ['interest', 'zins', 'zinsen', 'interets', 'intereses', 'interessi', 'rente', 'ranta', 'odsetki'] },
  { kind: 'cash', words: ['atm', 'cash', 'withdrawal', 'bargeld', 'bargeldauszahlung', 'geldautomat', 'retrait', 'cajero', 'prelievo', 'geldautomaat', 'geldopname', 'bankomat', 'uttag'] },
  { kind: 'check', words: ['check', 'cheque', 'scheck', 'assegno'] },
  { kind: 'pay', words: ['salary', 'wages', 'payroll', 'lohn', 'gehalt', 'salaire', 'nomina', 'stipendio', 'salaris', 'lon'] },
  { kind: 'card', words: ['card', 'pos', 'purchase', 'sale', 'karte', 'kartenzahlung', 'carte', 'tarjeta', 'compra', 'carta', 'betaalautomaat', 'kort', 'kortkop', 'karta', 'payment card'] },
  { kind: 'transfer', words: ['transfer', 'direct debit', 'standing order', 'uberweisung', 'lastschrift', 'dauerauftrag', 'virement', 'prelevement', 'transferencia', 'bonifico', 'overschrijving', 'incasso', 'overforing', 'przelew'] },
]

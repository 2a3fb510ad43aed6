import { isCurrencyCode } from './currency.ts'

/** What a symbol, code or name in a price text can stand for. */
export interface CurrencyMark {
  /** ISO 4217 codes it can mean. Empty for money this library has no code for (marks, toman, bitcoin). */
  readonly codes: readonly string[]
  /** The one to take when neither hint nor place says otherwise. */
  readonly usual: string | null
  /** Usual decimals of money without a code; null when not known. */
  readonly decimals: number | null
  /** `alone`: too short to be believed among other words (`R`, `QR`). `expected`: only if a hint or the place says so. */
  readonly trust: 'full' | 'alone' | 'expected'
  /** Believed only on this side of the number. */
  readonly side: 'before' | 'after' | null
  /** A word that an adjective may narrow down: `pesos` in "pesos mexicanos". */
  readonly general: boolean
}

const DOLLARS =
  'USD CAD AUD NZD HKD SGD TWD MXN ARS CLP COP CUP CUC DOP UYU BBD BSD BMD BZD BND KYD FJD GYD JMD LRD NAD SBD SRD ' +
  'TTD XCD CVE TOP WST MOP NIO ZWL ZWG'
const CROWNS = 'SEK NOK DKK ISK'
const POUNDS = 'GBP! EGP GIP FKP SHP LBP SYP SDG SSP'
const RUPEES = 'INR PKR LKR NPR MUR SCR'
const FRANCS = 'CHF! XOF XAF XPF DJF RWF BIF GNF KMF CDF'
const ANY_FRANCS = 'CHF XOF XAF XPF DJF RWF BIF GNF KMF CDF'
const DINARS = 'RSD KWD BHD JOD IQD LYD TND DZD MKD'
const RIALS = 'SAR QAR OMR YER IRR'
const PESOS = 'MXN ARS CLP COP CUP CUC DOP UYU PHP'
const SHILLINGS = 'KES UGX TZS SOS'

// Each line: the codes (`!` marks the usual one), then the symbols and short names, written as shops write them; capitals
// matter (`Ft` is money, `ft` is feet). Common practice and CLDR's symbols; no single source. `|` parts the names.
const EXACT: readonly (readonly [codes: string, names: string])[] = [
  [DOLLARS, '$|ドル|달러|دولار'],
  ['USD', 'US$|US $|$US|$ US|$USA|U.S.$|U$S|U$D|U$|US-$|$us|美元|美金|米ドル'],
  ['CAD! NIO', 'C$'],
  ['CAD', 'CA$|CA $|$CA|$ CA|CAN$|Can$|CDN$|Cdn$|$CAD|加元'],
  ['AUD', 'A$|AU$|AU $|$AU|$ AU|AUS$|Aus$|澳元'],
  ['NZD', 'NZ$|NZ $|$NZ|$ NZ'],
  ['HKD', 'HK$|HK $|$HK|$ HK|港币|港幣|港元'],
  ['SGD', 'S$|SG$|SG $|$SG|$ SG'],
  ['TWD', 'NT$|NT $|NTD|TW$|新台幣|新臺幣|台幣|台币|臺幣'],
  ['MXN', 'MX$|MX $|Mex$|MEX$|$MX|$ MX|M$N'],
  ['BRL', 'R$|R $|reais|Reais'],
  ['ARS', 'AR$|$AR'],
  ['CLP', 'CL$|$CL'],
  ['COP', 'COL$|Col$|CO$|$CO'],
  ['DOP', 'RD$|RD $'],
  ['UYU', '$U|UY$'],
  ['BOB', '$b|Bs.|Bs'],
  ['VES VED', 'Bs.S|Bs.F|Bs.D|BsS|BsF|BsD|Bs.S.'],
  ['BBD', 'Bds$|BDS$'],
  ['BSD BND', 'B$'],
  ['BMD BBD', 'BD$'],
  ['BZD', 'BZ$'],
  ['KYD', 'CI$'],
  ['FJD', 'FJ$'],
  ['GYD', 'G$|GY$'],
  ['JMD', 'J$|JA$'],
  ['LRD', 'L$|LD$'],
  ['NAD', 'N$|NA$'],
  ['SBD', 'SI$'],
  ['SRD', 'Sr$|SR$'],
  ['TTD', 'TT$|TT $'],
  ['XCD', 'EC$|EC $'],
  ['TOP', 'T$|PT$'],
  ['WST', 'WS$'],
  ['MOP', 'MOP$|澳門幣'],
  ['CUC', 'CUC$'],
  ['ZWG', 'ZiG'],
  ['ZWL ZWG', 'Z$'],
  ['EUR', '€|ευρώ|ΕΥΡΩ|евро|евра|يورو|אירו|ユーロ|유로|欧元|歐元|ევრო|եվրո|यूरो'],
  [POUNDS, '£'],
  ['EGP GBP LBP SYP SDG', '₤|جنيه'],
  ['GBP', 'UK£|GB£|英镑|英鎊|ポンド|파운드'],
  ['EGP', 'E£|L.E.|L.E|ج.م|جنيه مصري'],
  ['LBP', 'L£|L.L.|ل.ل'],
  ['SYP', 'ل.س'],
  ['SDG', 'ج.س'],
  ['LBP SYP', 'ليرة'],
  ['JPY CNY', '¥|圆|圓'],
  ['JPY', '円|日圓|日元|JP¥|JP￥'],
  ['CNY! TWD HKD MOP', '元'],
  ['CNY', 'CN¥|RMB|人民币|人民幣|元人民币'],
  ['KRW! KPW', '₩|원|원화|韩元|韓元'],
  [CROWNS, 'kr|Kr|KR'],
  ['SEK', 'SKr|Skr'],
  ['NOK', 'NKr|Nkr'],
  ['DKK', 'DKr|Dkr'],
  ['ISK', 'Ikr|ISKr'],
  ['CHF', 'SFr|Sfr|sFr|sfr|S₣'],
  [FRANCS, 'Fr|FR'],
  [ANY_FRANCS, '₣'],
  ['XOF XAF', 'CFA|FCFA|F CFA|F.CFA|Fcfa|CFA F|francs CFA|Francs CFA|franc CFA'],
  ['XPF', 'CFP|FCFP|F CFP|FCP'],
  ['GNF', 'GFr'],
  ['DJF', 'Fdj'],
  ['BIF', 'FBu|Fbu'],
  ['RWF', 'FRw|Frw|R₣'],
  ['RUB! BYN', 'руб|Руб|РУБ|рублей|рубля|рубль|р|Р'],
  ['RUB', '₽|RUR'],
  ['BYN ETB', 'Br|BR'],
  ['BYN', 'бел.руб|бел. руб'],
  ['UAH', '₴|грн|Грн|ГРН|гривень|гривні|гривня|hrn'],
  ['PLN', 'zł|Zł|ZŁ|złotych|złote|złoty|zlotych'],
  ['CZK', 'Kč|kč|KČ|Kčs|korun|koruny'],
  ['HUF', 'Ft|forint|Forint'],
  ['RON MDL', 'lei|Lei|LEI|leu|Leu|leului'],
  ['BGN', 'лв|Лв|ЛВ|лева|Лева|leva'],
  ['RSD', 'дин|Дин|ДИН|РСД|динара|dinara'],
  ['MKD', 'ден|Ден|ДЕН|денари'],
  ['ALL', 'Lekë|lekë|Lek|lek'],
  ['TRY', '₺|TL|Tl|YTL'],
  ['ILS', '₪|ש"ח|שח|NIS|שקל|שקלים|شيكل|ش.ج'],
  ['GEL', '₾|ლ|ლარი'],
  ['AMD', '֏|դր|դրամ|драм'],
  ['AZN', '₼|манат|ман|manat'],
  ['KZT', '₸|тг|Тг|тенге|теңге'],
  ['KGS', '⃀|сомов'],
  ['KGS! TJS', 'сом'],
  ['UZS', "so'm|So'm|soum|сўм|S'"],
  ['HRK', 'kn|Kn|KN|kuna'],
  ['CVE', 'Esc'],
  ['SOS', 'Sh.So.|So.Sh.|ش.ص'],
  [SHILLINGS, 'Sh'],
  ['UZS! RUB', 'сум'],
  ['TJS', 'сомонӣ|сомони'],
  ['MNT', '₮|төгрөг|төг'],
  ['INR', '₹|र|रु|रू|रुपये|रुपए|रुपया|ரூ|రూ|ರೂ|രൂ|રૂ|૱|ਰੁ|টাকা ভারতীয়'],
  [RUPEES, '₨|Rs|RS|rs|৲'],
  ['NPR', 'नेरू|ने.रू|NRs|Nrs'],
  ['PKR', 'PKRs|روپے|روپیہ'],
  ['LKR', 'රු|SLRs|SLRe'],
  ['MUR', 'MURs'],
  ['BDT', '৳|Tk|TK|টাকা'],
  ['MVR', 'Rf|ރ|MRf|Mrf'],
  ['IDR', 'Rp|RP|rp'],
  ['MYR', 'RM'],
  ['PHP', '₱|PhP|Php'],
  ['THB', '฿|บาท'],
  ['VND', '₫|đ|Đ|VNĐ|vnđ|VNd|đồng'],
  ['LAK', '₭|ກີບ'],
  ['KHR', '៛|រៀល'],
  ['MMK', 'ကျပ်'],
  ['AFN', '؋|افغانی|افغانۍ'],
  ['IRR', 'ریال|ریال ایران|ريال إيراني'],
  [RIALS, '﷼|ريال'],
  ['SAR', '⃁|ر.س|ريال سعودي'],
  ['QAR', 'ر.ق|ريال قطري'],
  ['OMR', 'ر.ع|ريال عماني|R.O'],
  ['YER', 'ر.ي|ريال يمني'],
  ['AED', '⃃|د.إ|د.ا|درهم إماراتي|Dhs|DHS'],
  ['AED MAD', 'Dh|DH|dh|درهم'],
  ['MAD', 'د.م|درهم مغربي|MDh'],
  ['KWD', 'د.ك|دينار كويتي'],
  ['BHD', 'د.ب|دينار بحريني'],
  ['JOD', 'د.أ|دينار أردني'],
  ['IQD', 'د.ع|ع.د|دينار عراقي'],
  ['LYD', 'د.ل|ل.د|دينار ليبي'],
  ['TND', 'د.ت|دينار تونسي'],
  ['DZD', 'د.ج|دج|دينار جزائري'],
  [DINARS, 'د.|د|دينار'],
  ['ERN', 'Nfk|نافكا'],
  ['ETB', 'ብር'],
  ['KES', 'KSh|Ksh|KSH|Kshs|KShs'],
  ['UGX', 'USh|Ush|USH|UShs'],
  ['TZS', 'TSh|TSH|Tsh|TShs'],
  ['NGN', '₦|naira|Naira'],
  ['GHS', '₵|GH₵|GH¢|GHC|Gh₵'],
  ['MZN', 'MTn|Mts'],
  ['AOA', 'Kz'],
  ['MGA', 'Ariary|ariary'],
  ['MRU', 'أ.م'],
  ['VUV', 'vatu'],
  ['PEN', 'S/.|S/'],
  ['PAB', 'B/.|B/'],
  ['CRC! SVC', '₡'],
  ['PYG', '₲|Gs|guaraníes'],
  ['AWG ANG XCG', 'ƒ'],
  ['AWG', 'Afl'],
  ['ANG', 'NAf|NAƒ'],
]

// Letters that mean money only when no other word stands by, or when a hint or the place says that it is expected.
const ALONE: readonly (readonly [codes: string, names: string, side: 'before' | 'after' | null])[] = [
  ['ZAR', 'R', 'before'],
  ['CAD', 'C $', null],
  ['AUD', 'A $', null],
  ['IQD', 'ID', 'after'],
  ['RSD', 'din', 'after'],
  ['BAM', 'KM|КМ', null],
  ['SAR! SCR', 'SR', null],
  ['QAR', 'QR', null],
  ['OMR', 'RO', null],
  ['KWD', 'KD', null],
  ['BHD', 'BD', null],
  ['JOD', 'JD', null],
  ['LYD', 'LD', null],
  ['TND', 'DT', null],
  ['DZD', 'DA', null],
  ['EGP', 'LE', null],
  ['LBP', 'LL', null],
  ['GNF', 'FG', null],
  ['RWF', 'RF', null],
  ['KMF', 'CF', null],
  ['CDF', 'FC', null],
  ['TJS', 'SM', null],
  ['MWK', 'MK', null],
  ['ZMW', 'ZK', null],
  ['MZN', 'MT', null],
  ['MGA', 'Ar', null],
  ['MRU', 'UM', null],
  ['STN', 'Db', null],
  ['VUV', 'VT|Vt', null],
  ['BTN', 'Nu', null],
  ['THB', 'Bt', null],
  ['MMK', 'Ks', null],
  ['XCG', 'Cg', null],
  ['KGS', 'с', 'after'],
]

// Letters that mean something else far more often: a quarter, a size or litres, an article, degrees.
const EXPECTED: readonly (readonly [codes: string, names: string])[] = [
  ['GTQ', 'Q'],
  ['HNL MDL ALL', 'L'],
  ['SLE', 'Le'],
  [ANY_FRANCS, 'F'],
]

// Words; capitals do not matter. "Pound" is missing on purpose (five pounds may be weight), "real" and "won" too.
const WORDS: readonly (readonly [codes: string, names: string])[] = [
  ['EUR', 'euro|euros|eurot|euroa|eura|eurov|evro|evra|evrov|eiro|eurų|eurai|ευρω'],
  [DOLLARS, 'dollar|dollars|dólares|dolares|dólar|dollari'],
  ['USD', 'us dollar|us dollars|u.s. dollar|u.s. dollars|american dollars|american dollar|us-dollar|usdollar'],
  ['CAD', 'canadian dollar|canadian dollars'],
  ['AUD', 'australian dollar|australian dollars'],
  ['NZD', 'new zealand dollar|new zealand dollars'],
  ['HKD', 'hong kong dollar|hong kong dollars'],
  ['SGD', 'singapore dollar|singapore dollars'],
  ['GBP', 'pound sterling|pounds sterling|british pound|british pounds|gb pounds'],
  ['CHF', 'swiss franc|swiss francs|schweizer franken|franken|stutz'],
  [ANY_FRANCS, 'franc|francs|franchi'],
  [CROWNS, 'krone|kroner|krona|kronor|krónur|króna'],
  [PESOS, 'peso|pesos'],
  [RUPEES, 'rupee|rupees|rupie|rupien'],
  [DINARS, 'dinar|dinars'],
  ['AED MAD', 'dirham|dirhams'],
  [RIALS, 'rial|rials|riyal|riyals'],
  [SHILLINGS, 'shilling|shillings|shilingi'],
  ['RUB! BYN', 'rub|ruble|rubles|rouble|roubles'],
  ['JPY', 'yen'],
  ['CNY', 'yuan|renminbi'],
  ['THB', 'baht'],
  ['MYR', 'ringgit'],
  ['IDR', 'rupiah'],
  ['ZAR', 'rand'],
  ['ILS', 'shekel|shekels'],
  ['UAH', 'hryvnia|hryvnias'],
  ['BGN', 'lev'],
  ['KZT', 'tenge'],
  ['VND', 'dong'],
  ['BDT', 'taka'],
]

// Money without a minor unit in this library: withdrawn codes, and units that are not any ISO currency. A toman is ten
// rials, so calling it IRR would be wrong by ten.
const WITHOUT_CODE: readonly (readonly [names: string, decimals: number | null])[] = [
  ['تومان|تومن|toman', 0],
  ['₿|Ƀ|BTC', null],
  ['DEM|FRF|ITL|ESP|ATS|BEF|NLG|FIM|PTE|GRD|IEP|LUF|SIT|MTL|CYP|SKK|EEK|LVL|LTL|ROL|TRL|BYR|ZMK', 2],
]

// Codes that are ordinary words or units when not in capitals (`30 sek`, `top 5`), and pence (`GBp`), a hundredth.
const CAPITALS_ONLY = new Set(
  'ALL ANG BAM BOB COP CUP DOP ERN GEL ILS INR LAK MAD MOP MUR NAD PAB PEN RON SEK SOS TOP TRY'.split(' '),
)
const PENCE = 'GBp'

function mark(codes: string, extra: Partial<CurrencyMark> = {}): CurrencyMark {
  const list = codes.split(' ')
  const usual = list.find((code) => code.endsWith('!'))?.slice(0, -1) ?? (list.length === 1 ? codes : null)
  return {
    codes: list.map((code) => code.replace('!', '')),
    usual,
    decimals: null,
    trust: 'full',
    side: null,
    general: false,
    ...extra,
  }
}

const NO_CODE: CurrencyMark = { codes: [], usual: null, decimals: 2, trust: 'full', side: null, general: false }

const each = (names: string, money: CurrencyMark) => names.split('|').map((name) => [name, money] as const)
const exact = new Map<string, CurrencyMark>([
  ...EXACT.flatMap(([codes, names]) => each(names, mark(codes))),
  ...ALONE.flatMap(([codes, names, side]) => each(names, mark(codes, { trust: 'alone', side }))),
  ...EXPECTED.flatMap(([codes, names]) => each(names, mark(codes, { trust: 'expected' }))),
  ...WITHOUT_CODE.flatMap(([names, decimals]) => each(names, { ...NO_CODE, decimals })),
])
const words = new Map(WORDS.flatMap(([codes, names]) => each(names, mark(codes, { general: codes.includes(' ') }))))

/** The longest name in the table, in characters: how far a search has to look ahead. */
export const longestName = Math.max(...[...exact.keys(), ...words.keys()].map((name) => name.length))

/**
 * The money a symbol, code or name stands for, or null when it is none that is known.
 *
 * @param name in the alphabet of `normalisePrice`
 * @example currencyMark('zł')?.codes // ['PLN']
 * @example currencyMark('kr')?.usual // null: four countries use it
 */
export function currencyMark(name: string): CurrencyMark | null {
  if (name.length > longestName) return null
  const known = exact.get(name) ?? words.get(name.toLowerCase())
  if (known) return known
  if (/^[A-Za-z]{3}$/.test(name)) return codeMark(name)
  return name.length <= 2 && /^\p{Sc}$/u.test(name) && name !== '¢' ? NO_CODE : null
}

function codeMark(name: string): CurrencyMark | null {
  const code = name.toUpperCase()
  if (!isCurrencyCode(code) || name === PENCE) return null
  return name === code || !CAPITALS_ONLY.has(code) ? mark(code) : null
}

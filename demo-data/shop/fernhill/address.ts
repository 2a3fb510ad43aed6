/** Where an order goes. */
export interface Address {
  readonly name: string
  readonly street: string
  readonly town: string
  readonly postcode: string
}

/** The fields of an address and what the form calls them. */
export const addressFields = [
  { key: 'name', label: 'Name', hint: 'name' },
  { key: 'street', label: 'Street', hint: 'street-address' },
  { key: 'town', label: 'Town and province', hint: 'address-level2' },
  { key: 'postcode', label: 'Postal code', hint: 'postal-code' },
] as const

const COOKIE = 'fernhill_address'
const KNOWN_CUSTOMER: Address = {
  name: 'Wren Castellane',
  street: '14 Alder Lane',
  town: 'Wexcombe, ON',
  postcode: 'X0X 0X0',
}

/** The address the cookie keeps, else that of the invented known customer, so that a review page can be asked for at once. */
export function rememberedAddress(cookie: string): Address {
  const kept = cookie.split(/;\s*/).find((pair) => pair.startsWith(`${COOKIE}=`))
  if (kept === undefined) return KNOWN_CUSTOMER
  return addressFrom(new URLSearchParams(decodeURIComponent(kept.slice(COOKIE.length + 1))))
}

/** The address as posted, blanks trimmed. */
export function addressFrom(form: URLSearchParams): Address {
  const field = (key: keyof Address): string => form.get(key)?.trim() ?? ''
  return { name: field('name'), street: field('street'), town: field('town'), postcode: field('postcode') }
}

/** Whether every field has something in it. */
export function isComplete(address: Address): boolean {
  return addressFields.every(({ key }) => address[key] !== '')
}

/** The header that keeps an address for the visit. */
export function addressCookie(address: Address): string {
  return `${COOKIE}=${encodeURIComponent(new URLSearchParams({ ...address }).toString())}; Path=/; HttpOnly; SameSite=Lax`
}

import { type Chance, type Half, keptFor } from './chance.ts'
import type { Coin } from './coin.ts'
import type { Shop, Word } from './plan.ts'
import type { Speech } from './speech/speech.ts'

const wordsOf = (speech: Speech, key: Word): readonly string[] => speech[key].split('|')

/** A shop that speaks this language. One word for one thing throughout its page, as shops do. */
export function shopOf(chance: Chance, speech: Speech, coin: Coin, half: Half): Shop {
  const said = new Map<Word, string>()
  function say(key: Word): string {
    const known = said.get(key)
    if (known !== undefined) return known
    const word = chance.pick(keptFor(half, wordsOf(speech, key)))
    said.set(key, word)
    return word
  }
  return {
    say,
    list: (key) => wordsOf(speech, key),
    put: (key, amount) => say(key).replace('{}', coin.text(amount)),
    money: coin.text,
    price: (from, to) => coin.price(chance.int(from, to)),
    share: (amount, percent) => Math.max(coin.step, Math.round((amount * percent) / 100 / coin.step) * coin.step),
    often: chance.often,
    int: chance.int,
    pick: chance.pick,
    lang: speech.lang,
    currency: speech.currency,
  }
}

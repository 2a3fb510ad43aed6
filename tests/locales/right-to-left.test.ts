import { describe, expect, it } from 'vitest'
import { fillIn } from '../../src/book/say.ts'
import { sayList, setApart } from '../../src/book/set-apart.ts'

// UAX 9 (Unicode Bidirectional Algorithm): U+2068 opens an isolate that finds its own direction, U+2069 closes it.
const apart = (text: string): string => `\u2068${text}\u2069`

describe('values in a text that runs right to left', () => {
  it('stand as they are where nothing runs right to left', () => {
    expect(setApart('Books', 'Tag to {pot}')).toBe('Books')
    expect(fillIn('{amount} left', { amount: '41.20' })).toBe('41.20 left')
    expect(sayList(['Books', 'Gifts'], 'en-GB')).toBe('Books and Gifts')
    expect(sayList([], 'ar')).toBe('')
  })

  it('are set apart in a sentence of Arabic, and where they are Arabic themselves', () => {
    expect(fillIn('أسنِد إلى {pot}', { pot: 'Books (new)' })).toBe(`أسنِد إلى ${apart('Books (new)')}`)
    expect(fillIn('Tag to {pot}', { pot: 'كتب' })).toBe(`Tag to ${apart('كتب')}`)
    expect(fillIn('אל {pot}', { pot: '12.50' })).toBe(`אל ${apart('12.50')}`)
  })

  it('a name without a value stays readable as the gap it is', () => {
    expect(fillIn('Tag to {pot}', {})).toBe('Tag to {pot}')
  })

  it('each name of a list is set apart', () => {
    expect(sayList(['Books', 'Gifts'], 'ar')).toBe(`${apart('Books')} و${apart('Gifts')}`)
  })
})

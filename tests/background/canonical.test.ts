import { describe, expect, it } from 'vitest'
import { canonical } from '../../src/background/canonical.ts'

/*
 * RFC 8785 (JSON Canonicalization Scheme). The cases are facts of cyberphone/json-canonicalization@19d51d7 testdata
 * (Apache-2.0), as gathered in the project's sources, section 12; the number rows are those of the RFC's appendix B.
 */
describe('canonical JSON', () => {
  it.each([
    ['[ 56, { "d": true, "10": null, "1": [ ] } ]', '[56,{"1":[],"10":null,"d":true}]'],
    [
      '{ "1": {"f": {"f": "hi","F": 5} ,"\\n": 56.0}, "10": { }, "": "empty", "a": { }, "111": [ {"e": "yes","E": "no" } ], "A": { } }',
      '{"":"empty","1":{"\\n":56,"f":{"F":5,"f":"hi"}},"10":{},"111":[{"E":"no","e":"yes"}],"A":{},"a":{}}',
    ],
    ['[333333333.33333329, 1E30, 4.50, 2e-3, 1e-27]', '[333333333.3333333,1e+30,4.5,0.002,1e-27]'],
  ])('of %s', (text, expected) => expect(canonical(JSON.parse(text))).toBe(expected))

  it.each([
    ['4340000000000001', '9007199254740994'],
    ['444b1ae4d6e2ef50', '1e+21'],
    ['3eb0c6f7a0b5ed8d', '0.000001'],
    ['3eb0c6f7a0b5ed8c', '9.999999999999997e-7'],
    ['44b52d02c7e14af6', '1e+23'],
    ['8000000000000000', '0'],
    ['becbf647612f3696', '-0.0000033333333333333333'],
  ])('of the number with the bits %s', (bits, expected) => {
    const view = new DataView(new ArrayBuffer(8))
    view.setBigUint64(0, BigInt(`0x${bits}`))
    expect(canonical(view.getFloat64(0))).toBe(expected)
  })

  it('sorts keys by UTF-16 code units: a pair of surrogates before U+FB33', () => {
    expect(canonical({ '\ufb33': 1, '\u{1f600}': 2, '\u20ac': 3, '\r': 4, '1': 5 })).toBe(
      '{"\\r":4,"1":5,"\u20ac":3,"\u{1f600}":2,"\ufb33":1}',
    )
  })

  it('leaves out members that are not there, and refuses what JSON has no text for', () => {
    expect(canonical({ a: undefined, b: null })).toBe('{"b":null}')
    for (const value of [Number.NaN, Number.POSITIVE_INFINITY, 'half \ud83d', { '\ude00': 1 }]) {
      expect(() => canonical(value)).toThrow()
    }
  })
})

import type { HostilePage } from './page.ts'

/*
 * Pages for numbered facts of the HTML standard's form submission (tests/published/html-submission.md) and of activation
 * (activation.md). `#press` is what is pressed, `#field` what has the keyboard.
 */

const form = (inner: string, attributes = ''): HostilePage => ({
  body: `<form id="form" method="post" action="ORDER" ${attributes}>${inner}</form>`,
})
const FIELD = '<input name="word" id="field">'

export const facts: Readonly<Record<string, HostilePage>> = {
  'html 4: a form that is not in the page sends nothing': {
    body: '<button type="button" id="go">Go on</button>',
    script: `const loose = document.createElement('form'); loose.method = 'post'; loose.action = 'ORDER'; loose.innerHTML = '<button>Place order</button>'
document.querySelector('#go').addEventListener('click', () => loose.requestSubmit())`,
  },
  'html 11: formnovalidate lets an empty required field pass': form(
    '<input name="word" id="field" required><button formnovalidate>Place order</button>',
  ),
  'html 13: the default button may lie outside its form': {
    body: `<button form="form">Place order</button><form id="form" method="post" action="ORDER">${FIELD}<button>Keep for later</button></form>`,
  },
  'html 15: a disabled default button stops Enter': form(
    `${FIELD}<button disabled>Place order</button><button formaction="/other">Keep for later</button>`,
  ),
  'html 16: no button, a field and a box': form(`${FIELD}<input type="checkbox" name="gift">`),
  'html 16: no button, two fields': form(`${FIELD}<input name="second">`),
  'html 18: a button of type button is none': form(`${FIELD}<button type="button">Place order</button>`),
  'html 19: a hidden default button is clicked by Enter': form(
    `${FIELD}<button style="display:none">Place order</button>`,
  ),
  'html 19: an inert default button is clicked by Enter': form(`${FIELD}<button inert>Place order</button>`),
  'html 20: the first button counts': form(
    `${FIELD}<button>Place order</button><button formaction="/other">Keep for later</button>`,
  ),
  'html 20: the first button counts, and it is another': form(
    `${FIELD}<button formaction="/other">Keep for later</button><button>Place order</button>`,
  ),
  'html 23: Enter on a slider': form('<input type="range" id="field" name="tip"><button>Place order</button>'),
  'html 23: Enter on a box without a button': form('<input type="checkbox" id="field" name="gift">'),
  'html 28: an event that only says click': {
    ...form('<button id="own">Place order</button><button type="button" id="press">Go on</button>'),
    script: `document.querySelector('#own').addEventListener('click', () => order())
document.querySelector('#press').addEventListener('click', () => document.querySelector('#own').dispatchEvent(new Event('click', { bubbles: true })))`,
  },
  'html 29: a press on what lies in the button': form('<button><b><i id="press">Place order</i></b></button>'),
  'html 35: an event that only says submit': {
    ...form('<button>Place order</button><button type="button" id="press">Go on</button>'),
    script: `document.querySelector('#form').addEventListener('submit', () => order())
document.querySelector('#press').addEventListener('click', () => document.querySelector('#form').dispatchEvent(new Event('submit', { bubbles: true, cancelable: true })))`,
  },
  'html 37: a field named submit': {
    ...form(
      '<input type="hidden" name="submit"><button>Place order</button><button type="button" id="press">Go on</button>',
    ),
    script:
      "document.querySelector('#press').addEventListener('click', () => HTMLFormElement.prototype.submit.call(document.querySelector('#form')))",
  },
  'html 38: the button says where to': {
    body: '<form action="/other"><button id="press" formaction="ORDER" formmethod="post">Place order</button></form>',
  },
  'html 41: another intent of the same form': form(
    `<button formaction="/other" id="press">Change the quantities</button><button>Place order</button>`,
  ),
  'html 44: the form of a button is not always around it': {
    body: `<table><tr><td><form id="form" method="post" action="ORDER"></td></tr><tr><td><button id="press">Place order</button></td></tr></form></table>`,
  },
  'html K: Enter on a box': form('<input type="checkbox" id="field" name="gift"><button>Place order</button>'),
  'html K: Space on a box': form('<input type="checkbox" id="field" name="gift"><button>Place order</button>'),
  'html K: Enter in a text area': form('<textarea id="field" name="note"></textarea><button>Place order</button>'),
  'html K: Enter on a choice': form(
    '<select id="field" name="colour"><option>grey</option></select><button>Place order</button>',
  ),
  'activation 10: a captured pointer': {
    body: `<div id="catch" style="padding:8px"></div><button type="button" id="press">Place order</button>`,
    script: `document.querySelector('#press').addEventListener('pointerdown', (event) => document.querySelector('#catch').setPointerCapture(event.pointerId))
document.querySelector('#catch').addEventListener('click', () => order())`,
  },
  'activation 24: inert keeps people out, not scripts': {
    body: `<div inert><form id="form" method="post" action="ORDER"><button id="own">Place order</button></form></div><button type="button" id="press">Go on</button>`,
    script: "document.querySelector('#press').addEventListener('click', () => document.querySelector('#own').click())",
  },
  'activation 30: popovertarget of a submit button is ignored': form(
    `<button id="press" popovertarget="pop">Place order</button><div id="pop" popover>Hello</div>`,
  ),
}

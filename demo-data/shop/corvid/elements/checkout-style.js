import { priceStyle, sheet } from './price.js'

/** The look of the checkout form inside its shadow root. */
export const style = sheet(`${priceStyle}
  :host { display: block; }
  * { box-sizing: border-box; }
  form { display: grid; grid-template-columns: minmax(0, 1.6fr) minmax(18rem, 1fr); gap: 3rem; align-items: start; }
  h2 { font-size: 1rem; margin: 0 0 1rem; }
  .express { display: flex; flex-wrap: wrap; gap: 0.8rem; align-items: center; margin: 0 0 1.4rem; color: #5d666b; }
  .save { font: inherit; background: #fff; border: 1px solid #14171a; padding: 0.4rem 0.9rem; cursor: pointer; color: #14171a; }
  .save:hover { background: #f0f2f1; }
  .lines { list-style: none; padding: 0; margin: 0 0 2rem; border-top: 1px solid #14171a; }
  .lines li { display: grid; grid-template-columns: 4rem minmax(0, 1fr) auto 6.5rem; gap: 1.1rem; align-items: center;
    padding: 0.9rem 0; border-bottom: 1px solid #d5dad8; }
  .name b { display: block; color: #14171a; }
  .name { color: #5d666b; }
  .lines .price { text-align: right; }
  input { font: inherit; color: inherit; }
  input[type="number"] { width: 4.2rem; padding: 0.35rem 0.5rem; border: 1px solid #8b9498; background: #fff; }
  fieldset { border: 0; padding: 0; margin: 0 0 2rem; min-width: 0; }
  legend { font-weight: 700; padding: 0; margin-bottom: 0.6rem; }
  fieldset > label:not(.field) { display: flex; gap: 0.7rem; align-items: center; padding: 0.35rem 0; }
  fieldset > label .price { margin-left: auto; }
  input[type="radio"] { accent-color: #14171a; width: 1.1rem; height: 1.1rem; margin: 0; }
  .field { display: block; margin-bottom: 0.9rem; color: #5d666b; }
  .field input { display: block; width: 100%; margin-top: 0.2rem; padding: 0.5rem 0.6rem; border: 1px solid #8b9498;
    background: #fff; color: #14171a; }
  aside { background: #fbf3d9; padding: 1.6rem; }
  .small { font-size: 0.85rem; color: #5d666b; margin: 0.9rem 0 0; }
  :focus-visible { outline: 3px solid #e8b931; outline-offset: 2px; }
  @media (max-width: 48rem) {
    form { grid-template-columns: minmax(0, 1fr); gap: 1rem; }
    .lines li { grid-template-columns: 3.2rem minmax(0, 1fr) auto; gap: 0.4rem 0.9rem; }
    .lines slot { grid-row: span 2; }
    .lines .price { grid-column: 3; }
    .lines .name { grid-column: 2 / 4; }
    .lines input { grid-column: 2; }
  }
`)

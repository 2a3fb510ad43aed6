import { type Html, html, markup } from '../html.ts'

const BRANCH =
  '<svg class="branch" viewBox="0 0 320 72" aria-hidden="true" fill="none" stroke="#6b4f36" stroke-width="3" stroke-linecap="round"><path d="M8 52c60-22 130 8 304-30M96 46c14-14 20-24 22-38M178 44c16 6 30 14 38 22M236 36c6-12 14-20 26-26"/><g fill="#cf4436" stroke="none"><circle cx="118" cy="10" r="6"/><circle cx="106" cy="24" r="5"/><circle cx="216" cy="64" r="6"/><circle cx="200" cy="52" r="5"/><circle cx="262" cy="10" r="6"/><circle cx="60" cy="40" r="5"/><circle cx="300" cy="20" r="5"/></g></svg>'

/** An article with no shop on it and no sum of money; its newsletter form posts to `/newsletter`. */
export function almanacPage(): Html {
  return html`<!doctype html>
<html lang="en-CA">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>What the hedge does in January – The Fernhill Almanac</title>
<link rel="icon" href="data:,">
<link rel="stylesheet" href="/strange/almanac.css">
</head>
<body>
<header><a href="/strange/plain">The Fernhill Almanac</a></header>
<main><article>
<p class="kicker">Notes from the hill</p>
<h1>What the hedge does in January</h1>
${markup(BRANCH)}
<p class="lead">A hawthorn in winter looks like nothing is happening. Sit with it for a quarter of an hour and you will count
eleven visitors, most of them small and brown and in a hurry.</p>
<p>The berries that were left in autumn are softer now, and the fieldfares have noticed. They work from the top down, which
is why the lowest branches are still red when the crown is bare. Leave those for the blackbirds, who prefer to eat within
hopping distance of cover.</p>
<p>Cutting can wait. A hedge trimmed in the dark months has lost both its larder and its shelter, and gains nothing the
gardener could not have had in late February. What it does like is a mulch of its own leaves, raked back under the skirts
after the path is swept.</p>
<h2>A job for a dry afternoon</h2>
<p>Walk the length of it and tie a strip of cloth wherever the daylight comes through at knee height. Those are the places
to lay a stem in spring. By the time the buds break you will have forgotten where they were; the cloth will not.</p>
<form class="newsletter" method="post" action="/newsletter">
<label for="email">The Almanac by letter, four times a year</label>
<span><input id="email" type="email" name="email" placeholder="you@example.org" required><button type="submit">Sign up</button></span>
</form>
</article></main>
<footer>An invented shop. Nothing is sold here.</footer>
</body>
</html>`
}

// The button is outside the form and places the order itself, a moment after the click.
document.getElementById('send').addEventListener('click', () => {
  setTimeout(() => document.getElementById('order').requestSubmit(), 150)
})

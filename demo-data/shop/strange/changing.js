// Gift wrap changes the total in place: 40.00 without, 45.00 with.
const wrap = document.getElementById('wrap')
wrap.addEventListener('click', () => {
  const row = document.getElementById('wrap-row')
  row.hidden = !row.hidden
  wrap.textContent = row.hidden ? 'Add gift wrap' : 'Remove gift wrap'
  document.getElementById('total').textContent = row.hidden ? '$40.00' : '$45.00'
  document.getElementById('case').value = row.hidden ? 'changing' : 'changing-wrapped'
})

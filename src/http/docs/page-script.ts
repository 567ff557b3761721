/** What the script of the documentation does to the page itself: search, objects opened in place, copying. */

/** Every operation by path and words, every object by its name and fields: read from the page when somebody first types. */
export const search = `
const box = document.querySelector('.search')
box.hidden = false
let index
function read() {
  const entries = [...document.querySelectorAll('main article, main section')]
  return entries.map(entry => {
    const title = entry.querySelector('h2, h3')?.textContent ?? ''
    const words = entry.matches('article')
      ? [...entry.querySelectorAll('.path, td:first-child code, p > code')].map(each => each.textContent)
      : []
    return { id: entry.id, title, text: (title + ' ' + entry.id + ' ' + words.join(' ')).toLowerCase() }
  })
}
const input = document.getElementById('search')
const found = document.getElementById('found')
input.addEventListener('input', () => {
  index ??= read()
  const asked = input.value.toLowerCase().split(/\\s+/).filter(word => word !== '')
  const rank = ({ title, text }) => (asked.every(word => title.toLowerCase().includes(word)) ? 0 : asked.every(word => text.includes(word)) ? 1 : 2)
  const hits = asked.length === 0 ? [] : index.filter(entry => rank(entry) < 2).sort((a, b) => rank(a) - rank(b)).slice(0, 15)
  found.replaceChildren(...(asked.length > 0 && hits.length === 0 ? [Object.assign(document.createElement('li'), { textContent: 'Nothing of that name here' })] : hits.map(({ id, title }) => {
    const item = document.createElement('li')
    const link = document.createElement('a')
    link.href = '#' + id
    link.textContent = title
    item.append(link)
    return item
  })))
})
`

/** An object named in a table opens below its row; asked again it closes. With a key held the link leads there. */
export const inPlace = `
addEventListener('click', event => {
  const link = event.target instanceof Element ? event.target.closest('td a[href^="#schema-"]') : null
  if (!link || event.ctrlKey || event.metaKey || event.shiftKey) return
  const table = document.getElementById(link.hash.slice(1))?.querySelector('details')
  if (!table) return
  event.preventDefault()
  const row = link.closest('tr')
  const open = row.nextElementSibling?.matches('.inside') ? row.nextElementSibling : null
  link.setAttribute('aria-expanded', String(!open))
  if (open) return open.remove()
  const inside = document.createElement('tr')
  inside.className = 'inside'
  const cell = document.createElement('td')
  cell.colSpan = 3
  cell.append(...[...table.children].slice(1).map(each => each.cloneNode(true)))
  inside.append(cell)
  row.after(inside)
})
`

export const copying = `
function copyButton(text) {
  const button = document.createElement('button')
  button.type = 'button'
  button.className = 'copy'
  button.textContent = 'Copy'
  button.addEventListener('click', async () => {
    try {
      await navigator.clipboard.writeText(text)
      button.textContent = 'Copied'
    } catch {
      button.textContent = 'Select and copy by hand'
    }
  })
  return button
}
for (const text of document.querySelectorAll('main pre')) {
  const around = document.createElement('div')
  around.className = 'copied'
  text.replaceWith(around)
  around.append(text, copyButton(text.textContent))
}
`

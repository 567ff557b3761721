/** Which of the forms a resource has answers an Accept header (RFC 9110 §12.5.1); parameters other than q do not count. */
interface Range {
  readonly type: string
  readonly q: number
  readonly specificity: number
}

/** Longer headers are no list a client means. */
const MOST_RANGES = 50

function readRange(text: string): Range {
  const [name = '', ...parameters] = text.split(';').map(part => part.trim().toLowerCase())
  const weight = parameters.find(parameter => parameter.startsWith('q='))?.slice(2)
  const q = weight === undefined || !/^(0(\.\d{0,3})?|1(\.0{0,3})?)$/.test(weight) ? 1 : Number(weight)
  return { type: name, q, specificity: name === '*/*' ? 0 : name.endsWith('/*') ? 1 : 2 }
}

function covers({ type }: Range, form: string): boolean {
  return type === '*/*' || type === form || (type.endsWith('/*') && form.startsWith(type.slice(0, -1)))
}

/** @returns the form to send, the first of `forms` where the client does not care; undefined where none will do */
export function chooseForm(accept: string | undefined, forms: readonly string[]): string | undefined {
  if (accept === undefined || accept.trim() === '') return forms[0]
  const ranges = accept.split(',').slice(0, MOST_RANGES).map(readRange)
  const weighed = forms.map(form => {
    const fitting = ranges.filter(range => covers(range, form)).sort((a, b) => b.specificity - a.specificity)
    return { form, q: fitting[0]?.q ?? 0 }
  })
  const best = Math.max(...weighed.map(({ q }) => q))
  return best === 0 ? undefined : weighed.find(({ q }) => q === best)?.form
}

/** The first calls a developer makes, in three languages; a test runs each against the service. */
export const firstRequest = {
  loadPowerW: 1140,
  systemVoltageV: 12,
  positiveLengthM: 4.4,
  return: { kind: 'chassis', leadLengthM: 0.6 },
  conductor: 'copper',
  gaugeSystem: 'awg'
} as const

export const firstPath = '/v1/supply/cables'

const body = JSON.stringify(firstRequest, null, 2)

interface Snippet {
  readonly language: 'curl' | 'Python' | 'JavaScript'
  readonly text: string
}

/** @param base  origin of the service, e.g. http://localhost:3000 */
export function snippets(base: string): readonly Snippet[] {
  const url = base + firstPath
  return [
    { language: 'curl', text: `curl -sS ${url} -H 'Content-Type: application/json' -d '${body}'` },
    {
      language: 'Python',
      text: `import json, urllib.request

body = ${body}
request = urllib.request.Request("${url}", json.dumps(body).encode(), {"Content-Type": "application/json"})
answer = json.load(urllib.request.urlopen(request))
print(answer["result"]["cable"]["designation"], answer["cautions"])`
    },
    {
      language: 'JavaScript',
      text: `const body = ${body}
const response = await fetch('${url}', {
  method: 'POST',
  headers: { 'content-type': 'application/json' },
  body: JSON.stringify(body)
})
const answer = await response.json()
console.log(answer.result.cable.designation, answer.cautions)`
    }
  ]
}

/** The same call as something a browser or a CDN can keep. */
export const firstQuery = `${firstPath}?loadPowerW=1140&systemVoltageV=12&positiveLengthM=4.4&return.kind=chassis&return.leadLengthM=0.6&conductor=copper&gaugeSystem=awg`

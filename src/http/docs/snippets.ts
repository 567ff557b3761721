/** The first calls a developer makes, in three languages; a test runs each against the service. */
export const firstRequest = {
  driver: {
    sheet: { fsHz: 29.5, qms: 5.4, qes: 0.47, vasL: 62, sdCm2: 490, reOhm: 3.4, xmaxMm: 14, powerW: 450 },
    coils: { count: 1, ratedOhm: 4 },
    mounting: { cutOutDiameterMm: 282, mountingDepthMm: 158 }
  },
  driverCount: 1,
  amplifier: { ratings: [{ loadOhm: 4, powerW: 420 }], minimumOhm: 2, channels: 1, class: 'D' },
  board: { material: 'mdf', thicknessMm: 18 },
  car: { space: { widthMm: 950, heightMm: 420, depthMm: 450 } },
  supply: { systemVoltageV: 12, positiveLengthM: 5, return: { kind: 'chassis', leadLengthM: 0.5 } },
  signal: {}
} as const

/** Of the long answer only what one screen shows. */
export const firstPath = '/v1/plans?parts=summary'

const body = JSON.stringify(firstRequest, null, 2)

interface Snippet {
  readonly language: 'curl' | 'Python' | 'JavaScript'
  readonly text: string
}

/** @param base  origin of the service, e.g. http://localhost:3000 */
export function snippets(base: string): readonly Snippet[] {
  const url = base + firstPath
  return [
    { language: 'curl', text: `curl -sS '${url}' -H 'Content-Type: application/json' -d '${body}'` },
    {
      language: 'Python',
      text: `import json, urllib.request

body = ${body}
request = urllib.request.Request("${url}", json.dumps(body).encode(), {"Content-Type": "application/json"})
answer = json.load(urllib.request.urlopen(request))
print(*answer["result"]["summary"]["lines"], sep="\\n")`
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
console.log(answer.result.summary.lines.join('\\n'))`
    }
  ]
}

/** A small calculation as something a browser or a CDN can keep: the cable of an amplifier that draws 1140 W. */
export const firstQuery =
  '/v1/supply/cables?loadPowerW=1140&systemVoltageV=12&positiveLengthM=4.4&return.kind=chassis&return.leadLengthM=0.6&conductor=copper&gaugeSystem=awg'

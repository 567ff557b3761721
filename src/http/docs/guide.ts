/** The guide: what a shop's or an app's developer must know before the reference is of use. */
import { code, type Html, html } from '../../documents/draw/html.ts'
import { operations } from '../operations.ts'
import type { Chapter } from './page.ts'
import { firstQuery, snippets } from './snippets.ts'

const known = new Set([...operations.map(({ operationId }) => operationId), 'runBatch'])

const ref = (operationId: string, text: string): Html =>
  known.has(operationId) ? html`<a href="/docs/reference#${operationId}">${text}</a>` : html`${text}`

const quickStart = (base: string) => html`
<p>Cabinbass takes the figures of data sheets and gives back a bass system that can be cut, wired and switched on. It keeps nothing: each call holds all it needs, and the same call always gives the same bytes. The first call is the whole job: a driver, an amplifier, a boot and a battery five metres away become a plan, of which this asks for the summary.</p>
${snippets(base).map(({ language, text }) => html`<h3>${language}</h3>${code(text, language)}`)}
<p>The answer says in a few lines what to build, with its figures, its verdict and every caution. Leave <code>?parts=summary</code> out and box, cut list, wiring, fuses, bill of materials and order of work come with it; <code>?form=html</code> is the plan as a page to print. Change <code>driverCount</code> to <code>"1"</code> and you get a refusal that points at the field:</p>
${code(
  JSON.stringify(
    {
      type: '/v1/problems/invalid-request',
      title: 'Request does not fit the contract',
      status: 400,
      detail: 'The request has 1 fault.',
      code: 'invalid-request',
      errors: [
        { pointer: '/driverCount', code: 'wrong-type', detail: 'Must be of type number; nothing is converted.' }
      ],
      instance: '/requests/…'
    },
    null,
    2
  ),
  'A refusal'
)}
<p>Every part of ${ref('planSystem', 'the plan')} is the very object that a single call gives; the chapters below go through them.</p>`

const steps: readonly (readonly [string, string, string])[] = [
  [
    'completeDriverParameters',
    'Driver',
    'Fill in what a data sheet leaves out and catch slips: litres for cubic metres, one coil for two. Everything below rests on these figures.'
  ],
  [
    'sizeEnclosure',
    'Enclosure',
    'Which boxes suit the driver, how large, tuned to what, and what each costs in space and reach.'
  ],
  ['computeResponse', 'Response', 'Level, excursion, impedance, group delay and air speed of one box over frequency.'],
  ['sizePort', 'Port', 'Area for quiet air, length for the tuning, and an honest “does not fit”.'],
  [
    'layOutBox',
    'Panels',
    'From net volume to panels, cut-outs and weight: driver, port and braces take their share of the air first.'
  ],
  ['wireCoils', 'Coils', 'The loads that coils in series and parallel can present to an amplifier.'],
  [
    'matchAmplifier',
    'Amplifier',
    'RMS power against RMS power at the wired load, and the meter voltage for setting the gain.'
  ],
  ['computeCurrent', 'Current', 'What the amplifiers draw at rest, with music and at full sine.'],
  ['rateFuse', 'Fuse', 'The fuse comes first: it protects the cable, not the amplifier.'],
  ['chooseCable', 'Cable', 'The smallest cable that passes voltage drop, heat behind that fuse, and a short circuit.'],
  ['setUpSignal', 'Signal', 'From the music source to the amplifier: turn-on, filters, gain.'],
  ['planSystem', 'Plan', 'All of it, with shopping list, build order, switch-on list and every caution.']
]

const chain = html`
<p>A driver in a box is a spring, a mass and a motor. The box’s air adds a spring, a port adds a second mass. The amplifier feeds the motor, the car feeds the amplifier, and each link has a limit that the next one must respect. Hence an order: what a step gives is what the next one takes.</p>
<ol>${steps.map(([operationId, name, text]) => html`<li><strong>${ref(operationId, name)}.</strong> ${text}</li>`)}</ol>
<p>Where a customer changes one thing, run the chain again from that step on. For a page that shows “does this amplifier fit this driver”, ${ref('matchAmplifier', 'one call')} is enough. For hundreds of combinations use ${ref('searchDesigns', 'the design search')} or ${ref('runBatch', 'a batch')}.</p>`

const conventions = html`
<ul>
<li><strong>Units stand in the name</strong>: <code>vasL</code> litres, <code>sdCm2</code> square centimetres, <code>lengthMm</code> for box parts, <code>lengthM</code> for cables, <code>leMh</code> millihenry. Pure numbers (<code>qts</code>) have none. One quantity, one unit, always metric.</li>
<li><strong>Voltage and power are RMS</strong>; “peak”, “max” and “music” watts are not taken. <strong>Excursion and air speed are peak</strong>, one way from rest. Level is RMS, re 20 µPa, at 1 m in half space: what a measurement outdoors on the ground gives. The car adds its own gain below.</li>
<li><strong>Nothing is converted, dropped or guessed.</strong> <code>"12"</code> is no number, a misspelt field is refused. Every default that was used stands in <code>assumed</code> with its pointer, value and reason.</li>
<li><strong><code>cautions</code></strong> are doubts and dangers beside a result, the gravest first: <code>note</code> is good to know, <code>care</code> wants watching or changing, <code>stop</code> means do not build or switch this on. A caution never turns a result into an error; show them. <a href="#cautions">All codes</a>.</li>
<li><strong><code>sources</code></strong> names where the figures come from; <a href="/v1/reference/sources">the table</a> says for each how it is known. A recalled figure is marked as recalled.</li>
<li><strong><code>?basis=true</code></strong> adds formula, inputs, value, unit (SI) and source of the chief figures, so that you can work them out again.</li>
<li><strong>Six significant digits</strong> leave by default, <code>?digits=full</code> gives all.</li>
<li>Text of yours (names, ids) comes back unchanged; control characters are refused.</li>
</ul>`

const caching = html`
<p>Every call is pure. Asking again is always safe; no idempotency key is needed.</p>
<ul>
<li><strong>Tables and catalogues</strong> under <code>/v1/reference</code>, <code>/v1/problems</code>, <code>/v1/cautions</code>, the contract and its reference, carry a strong <code>ETag</code> and <code>Cache-Control: public</code>. A CDN may keep them for an hour and must ask again then.</li>
<li><strong>The small calculators have a GET form</strong> with the same fields as query parameters; <code>a.b</code> is a field inside a field, <code>a.0.b</code> the first entry of a list. Same schema, same answer, and cacheable; <code>If-None-Match</code> is answered 304 without calculating:<br><a href="${firstQuery}"><code>${firstQuery}</code></a></li>
<li><strong>POST answers</strong> are <code>no-store</code>.</li>
<li>The tag changes with the version of the service. <code>calculation</code> of an answer holds that version and a digest of the question, on paper too; <a href="/v1/changes"><code>/v1/changes</code></a> says which figures each version moved. So an answer that was kept can be found again, and asked again where it matters.</li>
</ul>
<h3>Several forms</h3>
<p>Some results have other forms than JSON, such as drawings or a printable plan. <code>Accept</code> chooses, by q-value; without a wish it is JSON; where nothing fits, 406 lists what there is. Where a client cannot set it, <code>?form=pdf</code> names the form.</p>
<p>Answers of 1 kB and more leave compressed (<code>br</code>, <code>gzip</code>) for who says <code>Accept-Encoding</code>.</p>
<p>A form can ask before it asks: <code>?validate=only</code> answers 204 or the refusal, without calculating. What shows only in the figures is refused by the calculation itself.</p>
<p>A plan is long. <code>?parts=billOfMaterials,parts.box</code> gives these parts of it with the verdict and all cautions; an unknown part is refused. <code>?form=compact</code> is the plan for the screen of a phone: verdict, figures, every caution in short, what to buy and the titles of the steps, in about 5 kB. <code>summary.figures</code> holds the chief figures, so that nothing need be dug out of the parts; rows of the bill have an <code>id</code>, their <code>part</code> as a word and a <code>specification</code> in figures.</p>
<h3>Batches</h3>
<p>${ref('runBatch', 'A batch')} holds up to 100 calls, or 1,000 line by line. Each has its own status; one bad call spoils only itself. With <code>Accept: application/x-ndjson</code> or <code>?form=ndjson</code> each item leaves as a line when it and those before it are done, and the last line is the summary. A stream without that line was cut: ask again with <code>?fromIndex=</code> the number of lines you have.</p>
<h3>Versions</h3>
<p><code>/v1</code> is kept compatible: new optional fields, new operations and new codes may appear, so accept fields you do not know in answers. Whatever is to go carries <code>Deprecation</code> (RFC 9745), <code>Sunset</code> (RFC 8594) and a <code>Link</code> to its successor at least six months before; a breaking change lives under <code>/v2</code>.</p>`

const clients = html`
<p>The contract is <a href="/openapi.yaml">openapi.yaml</a> (OpenAPI 3.1, JSON Schema 2020-12); any generator reads it. The typed TypeScript client is a package of its own with one dependency:</p>
${code(
  `import { createClient } ${'from'} 'cabinbass-client'

const cabinbass = createClient({ baseUrl: 'http://localhost:3000' })
const { data, error } = await cabinbass.POST('/v1/coils/wiring', {
  body: { driverCount: 2, coilsPerDriver: 1, coilOhm: 4 }
})
if (error) console.error(error.code, error.errors)
else console.log(data.result.loads)`,
  'TypeScript client'
)}
<p>Send an <code>X-Request-Id</code> of 8 to 128 letters, digits, dots, dashes or underscores to find a call again in the logs; without one the service makes it. It comes back in the header and, on a refusal, in <code>instance</code>.</p>`

const safety = html`
<div class="stop"><p>A car battery gives more than a thousand amperes. A cable without a fuse near the battery can burn the car. Show the cautions of every answer to the person who builds, and never hide a <code>stop</code>.</p></div>
<ul>
<li>Take the negative lead off the battery before any work on the power cable, and put the fuse in last.</li>
<li>Stay clear of airbags and their yellow plugs and wires, of fuel and brake lines, and of everything orange in hybrid and electric vehicles: that is for licensed staff only.</li>
<li>Wood dust and solvents want a mask and air; a router and a saw want eye and ear protection.</li>
<li>A box is a load in a crash: bolt it to the body of the car, never to child-seat or belt anchors.</li>
<li>Sound at the levels computed here can damage hearing within minutes.</li>
<li>These are calculations, not an approval. Local rules, the makers’ instructions and a licensed installer go before anything said here.</li>
</ul>`

export function guideChapters(base: string): readonly Chapter[] {
  return [
    { id: 'quick-start', title: 'Quick start', body: quickStart(base) },
    { id: 'chain', title: 'The chain, for a developer', body: chain },
    { id: 'conventions', title: 'Conventions', body: conventions },
    { id: 'caching', title: 'Caching, batches, versions', body: caching },
    { id: 'clients', title: 'Clients', body: clients },
    { id: 'safety', title: 'Safety', body: safety }
  ]
}

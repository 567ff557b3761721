/** The safety case of an answered plan, walked step by step: every danger has its barrier at its step, and is said there once. */

// biome-ignore lint/suspicious/noExplicitAny: a test reads whatever the contract promises
type Answer = any

/** How a step says what no caution says, read beside the register. */
const stepWords: Readonly<Record<string, RegExp>> = {
  'single-cell': /1\.5 V cell/,
  'forbidden-ground-bolt': /never a bolt of a seat, a belt or an airbag/,
  'seat-back': /seat back is locked/,
  'boot-access': /must stay within reach/,
  'seat-plug': /not under a seat whose plug/,
  'rolling-away': /parking brake on, wheels chocked/,
  'locked-out': /tailgate and a window open/,
  water: /where water gathers/,
  'untold-vehicle': /gas tank, mains wiring on board/,
  memories: /radio code/,
  'fuse-at-source': /\d mm of cable between the post and the fuse/,
  'wrong-spare': /fuse rating beside its holder/,
  'hot-joint': /Pull at each/,
  'sensor-past': /on the body side of/,
  'test-resistor': /Ω rated \d+ W/,
  'meter-current': /Never the current range of a meter/,
  'parked-drain': /At most \d+ mA/,
  'radio-noise': /the radio receives and the key works/,
  children: /No child and no animal/,
  'loose-tone': /stay off the amplifier, insulated/,
  'coil-smell': /Off at the first smell/,
  'hot-case': /back of the hand near/,
  driving: /Sirens and horns are heard/
}

const wordsOf = ({ actions = [], checks = [], text = '', passIf = '' }: Answer) =>
  [...actions, ...checks, text, passIf].join(' ')

const places = (steps: readonly Answer[], code: string) =>
  steps.filter(({ cautions }: Answer) => cautions.includes(code)).map(({ id }: Answer) => id)

/** @returns what is wrong, in words; empty for a plan that builds nothing */
export function safetyFaults({ result, cautions }: Answer): readonly string[] {
  const { buildOrder, commissioning, safety } = result
  if (buildOrder === undefined) return safety.length === 0 ? [] : ['dangers without work']
  const steps: readonly Answer[] = [...buildOrder.steps, ...commissioning]
  const ids: readonly string[] = steps.map(({ id }) => id)
  const said = (code: string) => cautions.filter((each: Answer) => each.code === code)
  return safety.flatMap(({ id, barrier, proof, hands, basis, steps: own, caution }: Answer) => {
    const first = steps.find(step => step.id === own[0])
    const lacks = [barrier, proof, hands, basis].some(text => text === '' || text === undefined)
    return [
      ...(lacks ? [`${id} lacks barrier, proof, hands or basis`] : []),
      ...(own.length === 0 ? [`${id} has no step`] : []),
      ...own.filter((step: string) => !ids.includes(step)).map((step: string) => `${id} names ${step}`),
      ...(caution === undefined
        ? stepWords[id]?.test(own.map((step: string) => wordsOf(steps.find(each => each.id === step))).join(' '))
          ? []
          : [`${id} is said nowhere: ${wordsOf(first)}`]
        : [
            ...(said(caution).length === 0 ? [`${id}: ${caution} is not given`] : []),
            ...own
              .filter((step: string) => !places(steps, caution).includes(step))
              .map((step: string) => `${id} is not at ${step}`)
          ])
    ]
  })
}

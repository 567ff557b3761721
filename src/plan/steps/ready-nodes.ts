/** Before anything is cut or opened: what must be known, measured and at hand. */

import { say } from '../../domain/say.ts'
import { type BuildNode, step } from '../work/build-step.ts'

const readHandbook = step({
  id: 'read-handbook',
  place: 'table',
  title: say('ready.read-the-handbook-of-the-vehicle'),
  actions: [
    say('ready.look-up-how-the-battery-comes'),
    say('ready.look-for-what-this-plan-was'),
    say('ready.ask-your-insurer-and-your-inspection')
  ],
  needs: [],
  tools: [say('tool.handbook')],
  minutes: 60,
  checks: [say('ready.every-figure-that-the-plan-took')],
  cautions: ['licensed-work']
})

const measureVehicle = step({
  id: 'measure-vehicle',
  place: 'car',
  title: say('ready.measure-the-place'),
  actions: [say('ready.width-height-and-depth-of-the'), say('ready.compare-with-the-plan-before-a')],
  needs: ['read-handbook'],
  tools: [say('tool.tape-measure'), say('tool.straight-edge'), say('tool.camera')],
  minutes: 40,
  checks: [say('ready.place-and-opening-take-the-outer')]
})

const surveyRoute = step({
  id: 'survey-route',
  place: 'car',
  title: say('ready.follow-the-way-of-the-cable'),
  actions: [say('ready.follow-it-with-hand-and-lamp'), say('ready.lay-a-string-along-it-and')],
  needs: ['read-handbook'],
  tools: [say('tool.lamp'), say('tool.string'), say('tool.tape-measure'), say('tool.camera')],
  minutes: 60,
  checks: [say('ready.the-string-is-no-longer-than')],
  cautions: ['cable-routing']
})

const checkParts = step({
  id: 'check-parts',
  place: 'bench',
  title: say('ready.measure-the-parts-before-the-wood'),
  actions: [say('ready.cut-out-flange-depth-and-screw'), say('ready.measure-the-resistance-of-each-voice')],
  needs: ['measure-vehicle'],
  tools: [say('tool.calliper'), say('tool.ohmmeter')],
  uses: ['driver', 'amplifier', 'terminal-cup'],
  minutes: 30,
  checks: [say('ready.cut-out-and-flange-within-1'), say('ready.coils-of-one-kind-agree-to')]
})

const setUpBench = step({
  id: 'set-up-bench',
  place: 'bench',
  title: say('ready.set-up-the-bench'),
  actions: [say('ready.firm-trestles-at-the-height-of'), say('ready.first-aid-box-and-extinguisher-within')],
  needs: ['read-handbook'],
  tools: [
    say('tool.trestles'),
    say('tool.clamps'),
    say('tool.extractor'),
    say('tool.mask'),
    say('tool.goggles'),
    say('tool.ear-muffs'),
    say('tool.first-aid-box'),
    say('tool.extinguisher')
  ],
  substitutes: [say('ready.out-of-doors-upwind-of-the')],
  minutes: 30,
  checks: [say('ready.the-mask-fits-no-air-passes')]
})

export const readyNodes: readonly BuildNode[] = [readHandbook, measureVehicle, surveyRoute, checkParts, setUpBench]

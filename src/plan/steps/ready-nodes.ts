/** Before anything is cut or opened: what must be known, measured and at hand. */
import { type BuildNode, step } from '../work/build-step.ts'

const readHandbook = step({
  id: 'read-handbook',
  place: 'table',
  title: 'Read the handbook of the vehicle',
  actions: [
    'Look up how the battery comes off and what to note before (radio code, windows), how long the airbags need to discharge, what the lashing eyes hold, and how much the vehicle may carry.',
    'Look for what this plan was not told: a gas tank, mains wiring on board, a battery sensor, 48 V, a second battery. Where there is one, give it to the plan or ask its workshop before you open anything.',
    'Ask your insurer and your inspection body what they want to see.'
  ],
  needs: [],
  tools: ['handbook'],
  minutes: 60,
  checks: ['Every figure that the plan took instead of your handbook is replaced by the one you found.'],
  cautions: ['licensed-work']
})

const measureVehicle = step({
  id: 'measure-vehicle',
  place: 'car',
  title: 'Measure the place',
  actions: [
    'Width, height and depth of the place, and the opening at its narrowest; wheel arches, hinges, hatches and lashing eyes.',
    'Compare with the plan before a board is bought.'
  ],
  needs: ['read-handbook'],
  tools: ['tape measure', 'straight edge', 'camera'],
  minutes: 40,
  checks: ['Place and opening take the outer size of the plan; read the tape twice.']
})

const surveyRoute = step({
  id: 'survey-route',
  place: 'car',
  title: 'Follow the way of the cable',
  actions: [
    'Follow it with hand and lamp from the battery to the amplifier: a grommet the maker fitted, a place for the fuse, thick body metal for a ground point.',
    'Lay a string along it and measure the string.'
  ],
  needs: ['read-handbook'],
  tools: ['lamp', 'string', 'tape measure', 'camera'],
  minutes: 60,
  checks: ['The string is no longer than the cable of the plan; else ask for the plan again with its length.'],
  cautions: ['cable-routing']
})

const checkParts = step({
  id: 'check-parts',
  place: 'bench',
  title: 'Measure the parts before the wood',
  actions: [
    'Cut-out, flange, depth and screw circle of every driver, the terminals of the amplifier, the cup.',
    'Measure the resistance of each voice coil. What differs goes into the plan first.'
  ],
  needs: ['measure-vehicle'],
  tools: ['calliper', 'ohmmeter'],
  uses: ['driver', 'amplifier', 'terminal-cup'],
  minutes: 30,
  checks: ['Cut-out and flange within 1 mm of the plan.', 'Coils of one kind agree to 10 %.']
})

const setUpBench = step({
  id: 'set-up-bench',
  place: 'bench',
  title: 'Set up the bench',
  actions: [
    'Firm trestles at the height of your hips, light, clamps, extraction at the machine; nobody else in the dust.',
    'First-aid box and extinguisher within reach.'
  ],
  needs: ['read-handbook'],
  tools: ['trestles', 'clamps', 'extractor', 'mask', 'goggles', 'ear muffs', 'first-aid box', 'extinguisher'],
  substitutes: ['Out of doors, upwind of the saw, a mask does without an extractor.'],
  minutes: 30,
  checks: ['The mask fits: no air passes beside the nose.']
})

export const readyNodes: readonly BuildNode[] = [readHandbook, measureVehicle, surveyRoute, checkParts, setUpBench]

/** The vehicle made safe and opened: nothing is drilled, laid or joined before. */
import { type BuildNode, step } from '../work/build-step.ts'
import type { VehicleFacts } from './vehicle-facts.ts'

const parkSafe = step({
  id: 'park-safe',
  place: 'car',
  title: 'Park it safely',
  actions: [
    'Level ground, in the open or with the door wide open; parking brake on, wheels chocked, key out of its reach.',
    'Leave the tailgate and a window open: without a battery the locks may not open again.'
  ],
  needs: ['read-handbook'],
  tools: ['chocks'],
  substitutes: ['Two blocks of wood, one on each side of a wheel, do for chocks.'],
  minutes: 10,
  checks: ['It does not move when you push it.']
})

/** Only a vehicle with orange cables has it. */
const driveOff = step({
  id: 'drive-off',
  place: 'car',
  title: 'Switch the electric drive off',
  actions: [
    'As the handbook says: ready mode off, key away, charging cable out. Keep off everything orange.',
    'Its service disconnect is for a person trained on this vehicle.'
  ],
  needs: ['park-safe'],
  tools: ['handbook'],
  minutes: 30,
  cureMinutes: 10,
  checks: ['No ready light; charging cable out.'],
  cautions: ['high-voltage-orange', 'ready-mode']
})

const batteryOff = ({ capacitor }: VehicleFacts): BuildNode =>
  step({
    id: 'battery-off',
    place: 'car',
    title: 'Take the battery off',
    actions: [
      'Take the negative terminal off first and tie it back, insulated, where it cannot spring onto the post.',
      'Where the vehicle has a second battery already, take its negative terminal off too.',
      ...(capacitor ? ['A capacitor that is in already is discharged through its resistor.'] : []),
      'Wait as long as the handbook asks before you work near airbag wiring.'
    ],
    needs: ['park-safe', 'drive-off', 'survey-route'],
    tools: ['insulated spanner', 'goggles', 'insulating cap', 'voltmeter'],
    substitutes: ['A spanner wrapped in tape but for its jaws.', 'A thick rubber glove, tied over the terminal.'],
    minutes: 15,
    cureMinutes: 30,
    checks: ['The negative terminal is off and cannot touch the post; 0 V from it to the positive post.'],
    cautions: ['battery-disconnect', 'airbag-looms']
  })

const emptyBoot = step({
  id: 'empty-boot',
  place: 'car',
  title: 'Empty the boot',
  actions: [
    'Take out the floor and its cover as far as needed.',
    'Note what must stay within reach: spare wheel or repair kit, jack, towing eye, warning triangle, release of the tailgate, hatches, vents.'
  ],
  needs: ['park-safe'],
  minutes: 20,
  checks: ['The list of what must stay within reach hangs beside the plan.']
})

const openTrim = step({
  id: 'open-trim',
  place: 'car',
  title: 'Open the trim',
  actions: [
    'Unclip sills and side trim along the way of the cables with a plastic lever; photograph every clip.',
    'Leave yellow connectors closed.'
  ],
  needs: ['battery-off'],
  tools: ['plastic levers', 'screwdriver', 'camera'],
  substitutes: ['An old plastic card or a wooden spatula does for a lever.'],
  minutes: 60,
  checks: ['No connector hangs open.'],
  cautions: ['airbag-looms']
})

export function startNodes(facts: VehicleFacts): readonly BuildNode[] {
  const orange = facts.drive === 'hybrid' || facts.drive === 'electric'
  return [parkSafe, ...(orange ? [driveOff] : []), batteryOff(facts), emptyBoot, openTrim]
}

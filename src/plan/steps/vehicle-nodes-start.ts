/** The vehicle made safe and opened: nothing is drilled, laid or joined before. */

import { say } from '../../domain/say.ts'
import { type BuildNode, step } from '../work/build-step.ts'
import type { VehicleFacts } from './vehicle-facts.ts'

const parkSafe = step({
  id: 'park-safe',
  place: 'car',
  title: say('vehicle.park-it-safely'),
  actions: [say('vehicle.level-ground-in-the-open-or'), say('vehicle.leave-the-tailgate-and-a-window')],
  needs: ['read-handbook'],
  tools: [say('tool.chocks')],
  substitutes: [say('vehicle.two-blocks-of-wood-one-on')],
  minutes: 10,
  checks: [say('vehicle.it-does-not-move-when-you')]
})

/** Only a vehicle with orange cables has it. */
const driveOff = step({
  id: 'drive-off',
  place: 'car',
  title: say('vehicle.switch-the-electric-drive-off'),
  actions: [say('vehicle.as-the-handbook-says-ready-mode'), say('vehicle.its-service-disconnect-is-for-a')],
  needs: ['park-safe'],
  tools: [say('tool.handbook')],
  minutes: 30,
  cureMinutes: 10,
  checks: [say('vehicle.no-ready-light-charging-cable-out')],
  cautions: ['high-voltage-orange', 'ready-mode']
})

const batteryOff = ({ capacitor }: VehicleFacts): BuildNode =>
  step({
    id: 'battery-off',
    place: 'car',
    title: say('vehicle.take-the-battery-off'),
    actions: [
      say('vehicle.take-the-negative-terminal-off-first'),
      say('vehicle.where-the-vehicle-has-a-second'),
      ...(capacitor ? [say('vehicle.a-capacitor-that-is-in-already')] : []),
      say('vehicle.wait-as-long-as-the-handbook')
    ],
    needs: ['park-safe', 'drive-off', 'survey-route'],
    tools: [say('tool.insulated-spanner'), say('tool.goggles'), say('tool.insulating-cap'), say('tool.voltmeter')],
    substitutes: [say('vehicle.a-spanner-wrapped-in-tape-but'), say('vehicle.a-thick-rubber-glove-tied-over')],
    minutes: 15,
    cureMinutes: 30,
    checks: [say('vehicle.the-negative-terminal-is-off-and')],
    cautions: ['battery-disconnect', 'airbag-looms']
  })

const emptyBoot = step({
  id: 'empty-boot',
  place: 'car',
  title: say('vehicle.empty-the-boot'),
  actions: [say('vehicle.take-out-the-floor-and-its'), say('vehicle.note-what-must-stay-within-reach')],
  needs: ['park-safe'],
  minutes: 20,
  checks: [say('vehicle.the-list-of-what-must-stay')]
})

const openTrim = step({
  id: 'open-trim',
  place: 'car',
  title: say('vehicle.open-the-trim'),
  actions: [say('vehicle.unclip-sills-and-side-trim-along'), say('vehicle.leave-yellow-connectors-closed')],
  needs: ['battery-off'],
  tools: [say('tool.plastic-levers'), say('tool.screwdriver'), say('tool.camera')],
  substitutes: [say('vehicle.an-old-plastic-card-or-a')],
  minutes: 60,
  checks: [say('vehicle.no-connector-hangs-open')],
  cautions: ['airbag-looms']
})

export function startNodes(facts: VehicleFacts): readonly BuildNode[] {
  const orange = facts.drive === 'hybrid' || facts.drive === 'electric'
  return [parkSafe, ...(orange ? [driveOff] : []), batteryOff(facts), emptyBoot, openTrim]
}

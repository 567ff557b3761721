/**
 * What each step of the work takes of a careful first build and how long what it leaves cures, in minutes: judgements of the
 * trade, common practice, no source, written a second time beside the steps. Who changes one changes it here as well.
 */
import type { VehicleFacts } from '../../src/plan/steps/vehicle-facts.ts'
import type { BuildFacts } from '../../src/plan/work/build-facts.ts'

interface StepTimes {
  readonly work: number
  readonly cure?: number
}

const DAY = 1440
const byRouter = <T>({ way }: BuildFacts, router: T, hand: T): T => (way === 'saw-and-router' ? router : hand)

/** A panel from a service is only carried and measured; a jigsaw takes three times as long over it as a saw with a fence. */
function cutting({ sheetCount, panelCount, way }: BuildFacts): number {
  if (way === 'saw-and-router') return sheetCount * 20 + panelCount * 4
  return sheetCount * 25 + panelCount * 12
}

/** @returns steps that a plan may have; those it has not are left over */
export function workTimes(box: BuildFacts, vehicle: VehicleFacts): Readonly<Record<string, StepTimes>> {
  const amplifiers = vehicle.circuit.amplifiers.length
  const radiators = box.radiators?.count ?? 0
  return {
    'read-handbook': { work: 60 },
    'measure-vehicle': { work: 40 },
    'survey-route': { work: 60 },
    'check-parts': { work: 30 },
    'set-up-bench': { work: 30 },
    'measure-board': { work: 10 },
    'cut-panels': { work: cutting(box) },
    'order-panels': { work: 60 + box.panelCount * 2 },
    'saw-bevels': { work: 10 + box.bevels.length * byRouter(box, 5, 15) },
    'cut-joints': {
      work: 10 + byRouter(box, 8, 12) * box.joints.pocketCount + byRouter(box, 1, 4) * box.joints.fingerCount
    },
    'dry-fit': { work: 20 },
    'cut-holes': { work: (box.cutOutCount || 1) * byRouter(box, 15, 25) },
    'drill-pilots': { work: 30 },
    'driver-fixings': { work: box.fixing === 'machine-screw' ? 15 : 10 },
    'laminate-baffle': { work: 25, cure: 60 },
    'port-walls': { work: box.portFlareM > 0 ? 40 : 25, cure: 45 },
    'port-tubes': { work: 20, cure: 60 },
    braces: { work: box.braceCount * 10 },
    'assemble-shell': { work: 45, cure: 45 },
    'fit-inside': { work: 20, cure: 45 },
    'anchor-plates': { work: 20 },
    'seal-seams': { work: 20, cure: 120 },
    'colour-port': { work: 20, cure: 120 },
    'line-walls': { work: 30, cure: 60 },
    'wire-inside': { work: 10 },
    'close-box': { work: 25, cure: box.screwedFront ? 0 : DAY },
    'close-front': { work: 10 },
    'leak-test': { work: 20 },
    sand: { work: 60, cure: 60 },
    'seal-edges': { work: 20, cure: 120 },
    cover: { work: 90, cure: DAY },
    terminals: { work: 15 },
    'weight-radiators': { work: 10 + radiators * 5 },
    'fit-radiators': { work: radiators * 15 },
    'fit-driver': { work: box.driverCount * 20 },
    'radiator-leak-test': { work: 5 },
    'cone-leak-test': { work: 5 },
    polarity: { work: 5 },
    listen: { work: 15 },
    'load-box': { work: 25 },
    mount: { work: 60 },
    'park-safe': { work: 10 },
    'drive-off': { work: 30, cure: 10 },
    'battery-off': { work: 15, cure: 30 },
    'empty-boot': { work: 20 },
    'open-trim': { work: 60 },
    'pass-bulkhead': { work: 60 },
    'lay-power-cable': { work: 60 },
    'lay-return': { work: 45 },
    'crimp-lugs': { work: vehicle.lugCount * 10 },
    'fit-fuse-holder': { work: 30 },
    'make-ground': { work: 30 },
    'fit-block': { work: 30 },
    'mount-amplifier': { work: amplifiers * 45 },
    'mount-second': { work: 120 },
    'mount-converter': { work: 60 },
    'mount-capacitor': { work: 30 },
    'lay-signal': { work: 45 },
    'tap-speaker-level': { work: 90 },
    'lay-turn-on': { work: 30 },
    'lay-speaker-cable': { work: 30 },
    label: { work: 15 },
    'connect-amplifier': { work: amplifiers * 20 }
  }
}

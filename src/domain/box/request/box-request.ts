/** A port as `layOutBox` takes it, in SI. */
import type { RoundPort, SlotPort } from '../../../contract/boxes/box-hardware.ts'

export type BoxPort = RoundPort | SlotPort

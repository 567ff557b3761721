import type { RoundPortWish, SlotPortWish } from '../../../contract/ports/port-sizing.ts'
export type PortWish = RoundPortWish | SlotPortWish

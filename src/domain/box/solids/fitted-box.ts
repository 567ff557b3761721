import type { BuiltDivider } from '../shell/divider.ts'
import type { Inside } from '../shell/face.ts'
import type { Ledge } from '../shell/ledges.ts'
import type { BarePanel } from '../shell/shell-panels.ts'
import type { BuiltPort } from '../slot/built-port.ts'
import type { Mounted } from './mounting.ts'

/** A box as far as bodies, braces and clearances need it: its boards and what is set into them. */
export interface FittedBox {
  readonly inside: Inside
  readonly panels: readonly BarePanel[]
  readonly mounted: readonly Mounted[]
  readonly netM3: number
  readonly port?: BuiltPort
  readonly divider?: BuiltDivider
  /** Behind a front that comes off. */
  readonly ledges?: readonly Ledge[]
}

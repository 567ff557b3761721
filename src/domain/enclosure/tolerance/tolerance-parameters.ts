/** The physical parameters that vary from part to part, and what varying them does to a request. */
import type { DriverRequest } from '../../../contract/drivers/driver.ts'
import type { ChamberRequest } from '../../../contract/enclosures/enclosure.ts'
import type { Spread } from '../../../contract/enclosures/tolerance.ts'
import type { ChamberName } from '../../../contract/enclosures/words.ts'
import {
  type ChamberPart,
  chamberNames,
  chamberParts,
  type DriverParameter,
  driverParameters,
  type ParameterName
} from '../../../contract/enclosures/words.ts'
import { CELSIUS_ZERO_K, STANDARD_PRESSURE_PA } from '../../constants.ts'
import type { Driver } from '../../driver/driver.ts'
import type { EnclosureRequest, SystemRequest } from '../model/request.ts'

const driverSpreads = {
  'coil-resistance': 'rePercent',
  'force-factor': 'blPercent',
  'moving-mass': 'mmsPercent',
  'suspension-compliance': 'cmsPercent',
  'suspension-resistance': 'rmsPercent',
  'cone-area': 'sdPercent',
  'coil-inductance': 'lePercent'
} as const satisfies Record<DriverParameter, keyof Spread>

const chamberSpreads = {
  volume: 'volumePercent',
  'port-length': 'portLengthPercent',
  'port-area': 'portAreaPercent',
  'radiator-mass': 'radiatorMassPercent',
  'radiator-compliance': 'radiatorCompliancePercent',
  losses: 'lossPercent'
} as const satisfies Record<ChamberPart, keyof Spread>

export interface Parameter {
  readonly name: ParameterName
  readonly spread: keyof Spread
}

function chamberHas(part: ChamberPart, { port, passiveRadiators, leakQ, absorptionQ }: ChamberRequest): boolean {
  if (part === 'volume') return true
  if (part === 'losses') return [leakQ, absorptionQ, port?.lossQ, passiveRadiators?.qm].some(q => q !== undefined)
  return part.startsWith('port') ? port !== undefined : passiveRadiators !== undefined
}

const hasInductance = ({ leH, le2H, leFactor }: DriverRequest) => (leH ?? le2H ?? leFactor) !== undefined

/** Only what the request contains can vary; air that is given by its properties has no temperature. */
export function parametersOf({ driver, enclosure, air }: SystemRequest): readonly Parameter[] {
  const ofDriver = driverParameters.filter(name => name !== 'coil-inductance' || hasInductance(driver))
  return [
    ...ofDriver.map(name => ({ name, spread: driverSpreads[name] })),
    ...chamberNames.flatMap(chamber => {
      const request = enclosure.kind === 'custom' ? undefined : enclosure[chamber]
      if (request === undefined) return []
      const parts = chamberParts.filter(part => chamberHas(part, request))
      return parts.map(part => ({ name: `${chamber}-${part}` as const, spread: chamberSpreads[part] }))
    }),
    ...(air?.densityKgPerM3 === undefined
      ? [{ name: 'air-temperature', spread: 'temperatureK' } satisfies Parameter]
      : [])
  ]
}

/** Factor by which a parameter differs from its nominal value; the temperature's is of the absolute temperature. */
type FactorOf = (name: ParameterName) => number

type Scaled<Field extends string> = { readonly [Key in Field]?: number }

function scaled<Field extends string>(from: Scaled<Field>, fields: readonly Field[], factor: number): Scaled<Field> {
  const entries = fields.flatMap(field =>
    from[field] === undefined ? [] : [[field, (from[field] as number) * factor]]
  )
  return Object.fromEntries(entries) as Scaled<Field>
}

/** By the mechanical set alone, so that fs, Q and Vas move together as they do in real drivers. */
function variedDriver(request: DriverRequest, nominal: Driver, factorOf: FactorOf): DriverRequest {
  const inductance = hasInductance(request) ? factorOf('coil-inductance') : 1
  return {
    ...scaled(request, ['leH', 'le2H', 'leFactor'], inductance),
    ...scaled(request, ['leParallelOhm', 'le2ParallelOhm', 'leExponent', 'xmaxM', 'powerW'], 1),
    sdM2: nominal.sdM2 * factorOf('cone-area'),
    reOhm: nominal.coil.reOhm * factorOf('coil-resistance'),
    mmsKg: nominal.mmsKg * factorOf('moving-mass'),
    cmsMPerN: nominal.cmsMPerN * factorOf('suspension-compliance'),
    rmsKgPerS: nominal.rmsKgPerS * factorOf('suspension-resistance'),
    blTm: nominal.blTm * factorOf('force-factor')
  }
}

function variedChamber(request: ChamberRequest, name: ChamberName, factorOf: FactorOf): ChamberRequest {
  const { port, passiveRadiators } = request
  const losses = chamberHas('losses', request) ? factorOf(`${name}-losses`) : 1
  return {
    ...scaled(request, ['leakQ', 'absorptionQ'], losses),
    netVolumeM3: request.netVolumeM3 * factorOf(`${name}-volume`),
    ...(port && {
      port: {
        ...port,
        ...scaled(port, ['lossQ'], losses),
        lengthM: port.lengthM * factorOf(`${name}-port-length`),
        areaM2: port.areaM2 * factorOf(`${name}-port-area`)
      }
    }),
    ...(passiveRadiators && {
      passiveRadiators: {
        ...passiveRadiators,
        ...scaled(passiveRadiators, ['qm'], losses),
        massKg: passiveRadiators.massKg * factorOf(`${name}-radiator-mass`),
        complianceMPerN: passiveRadiators.complianceMPerN * factorOf(`${name}-radiator-compliance`)
      }
    })
  }
}

const NOMINAL_C = 20

function variedAir({ air }: SystemRequest, factorOf: FactorOf): NonNullable<SystemRequest['air']> {
  if (air?.densityKgPerM3 !== undefined) return air
  const kelvin = (air?.temperatureC ?? NOMINAL_C) + CELSIUS_ZERO_K
  return {
    temperatureC: kelvin * factorOf('air-temperature') - CELSIUS_ZERO_K,
    pressurePa: air?.pressurePa ?? STANDARD_PRESSURE_PA
  }
}

/** The dimensions of a custom enclosure are held: its parts have no common names. */
function variedEnclosure(enclosure: EnclosureRequest, factorOf: FactorOf): EnclosureRequest {
  if (enclosure.kind === 'custom') return enclosure
  const { rear, front } = enclosure
  return {
    ...enclosure,
    ...(rear && { rear: variedChamber(rear, 'rear', factorOf) }),
    ...(front && { front: variedChamber(front, 'front', factorOf) })
  }
}

/**
 * The request of one sample.
 *
 * @param nominal  the driver of the request, in the air of the request
 */
export function variedRequest(request: SystemRequest, nominal: Driver, factorOf: FactorOf): SystemRequest {
  return {
    ...request,
    driver: variedDriver(request.driver, nominal, factorOf),
    enclosure: variedEnclosure(request.enclosure, factorOf),
    air: variedAir(request, factorOf)
  }
}

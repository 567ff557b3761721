/** The same mathematics for one kind each, written by hand as a single loop: the yardstick of the general solver. */
import type { ResponseSystem } from '../../src/domain/enclosure/model/response-system.ts'
import type { Branch, Chamber } from '../../src/domain/network/network.ts'

export type HandLoop = (frequenciesHz: readonly number[]) => readonly Float64Array[]

const DEGREES = 180 / Math.PI
const outputs = (points: number, curves: number) => Array.from({ length: curves }, () => new Float64Array(points))

interface Constants {
  readonly re: number
  readonly le: number
  readonly bl: number
  readonly sd: number
  readonly mms: number
  readonly rms: number
  readonly stiffness: number
  readonly scale: number
  readonly voltageV: number
}

function constants({ driver, air, voltageV }: ResponseSystem): Constants {
  return {
    re: driver.coil.reOhm,
    le: driver.coil.cells[0]?.inductanceH ?? 0,
    bl: driver.blTm,
    sd: driver.sdM2,
    mms: driver.mmsKg,
    rms: driver.rmsKgPerS,
    stiffness: 1 / driver.cmsMPerN,
    scale: ((air.densityKgPerM3 * voltageV) / (2 * Math.PI * 20e-6)) ** 2,
    voltageV
  }
}

/** One chamber with leak, absorption and a lossy port; twelve curves. */
export function ventedByHand(system: ResponseSystem): HandLoop {
  const { re, le, bl, sd, mms, rms, stiffness, scale, voltageV } = constants(system)
  const { complianceM3PerPa: c, absorptionPaSPerM3: ra } = system.network.chambers[0] as Chamber
  const [port, leak] = system.network.branches as [Branch, Branch]
  const [rp, mp] = [port.resistancePaSPerM3, port.massKgPerM4]
  const gl = 1 / leak.resistancePaSPerM3
  const area = system.ports[0]?.areaM2 ?? 1
  const peak = Math.SQRT2 * voltageV
  return frequencies => {
    const points = frequencies.length
    const [level, phase, delay, excursion, velocity, ohm, angle, current, power, pressure, speed, hertz] = outputs(
      points,
      12
    ) as [
      Float64Array,
      Float64Array,
      Float64Array,
      Float64Array,
      Float64Array,
      Float64Array,
      Float64Array,
      Float64Array,
      Float64Array,
      Float64Array,
      Float64Array,
      Float64Array
    ]
    for (let k = 0; k < points; k++) {
      const f = frequencies[k] as number
      const w = 2 * Math.PI * f
      const x = w * c * ra
      const cs = 1 + x * x
      const ycr = (w * c * x) / cs
      const yci = (w * c) / cs
      const dycr = (2 * x * c) / (cs * cs)
      const dyci = ((1 - x * x) * c) / (cs * cs)
      const xp = w * mp
      const ps = 1 / (rp * rp + xp * xp)
      const ypr = rp * ps
      const ypi = -xp * ps
      const dypr = 2 * mp * ypr * ypi
      const dypi = mp * (ypi * ypi - ypr * ypr)
      const zei = w * le
      const zmi = w * mms - stiffness / w
      const dzmi = mms + stiffness / (w * w)
      const dr = re * rms - zei * zmi + bl * bl
      const di = re * zmi + zei * rms
      const ddr = -le * zmi - zei * dzmi
      const ddi = le * rms + re * dzmi
      const ds = dr * dr + di * di
      const qr = dr / ds
      const qi = -di / ds
      const sr = qr * qr - qi * qi
      const si = 2 * qr * qi
      const dqr = si * ddi - sr * ddr
      const dqi = -(sr * ddi + si * ddr)
      const s2 = sd * sd
      const yr = s2 * (re * qr - zei * qi) + ycr + ypr + gl
      const yi = s2 * (re * qi + zei * qr) + yci + ypi
      const dyr = s2 * (-le * qi + re * dqr - zei * dqi) + dycr + dypr
      const dyi = s2 * (le * qr + re * dqi + zei * dqr) + dyci + dypi
      const ys = yr * yr + yi * yi
      const jr = -sd * bl * qr
      const ji = -sd * bl * qi
      const pr = (jr * yr + ji * yi) / ys
      const pi = (ji * yr - jr * yi) / ys
      const er = -sd * bl * dqr - (dyr * pr - dyi * pi)
      const ei = -sd * bl * dqi - (dyr * pi + dyi * pr)
      const dpr = (er * yr + ei * yi) / ys
      const dpi = (ei * yr - er * yi) / ys
      const fr = bl + sd * (re * pr - zei * pi)
      const fi = sd * (re * pi + zei * pr)
      const ur = qr * fr - qi * fi
      const ui = qr * fi + qi * fr
      const gr = rms - bl * sd * pr
      const gi = zmi - bl * sd * pi
      const ir = qr * gr - qi * gi
      const ii = qr * gi + qi * gr
      const vr = -(ycr * pr - yci * pi)
      const vi = -(ycr * pi + yci * pr)
      const dvr = -(dycr * pr - dyci * pi + ycr * dpr - yci * dpi)
      const dvi = -(dycr * pi + dyci * pr + ycr * dpi + yci * dpr)
      const vs = vr * vr + vi * vi
      const is = ir * ir + ii * ii
      const amps = Math.sqrt(is) * voltageV
      const speedOfCone = Math.sqrt(ur * ur + ui * ui)
      const pressureIn = Math.sqrt(pr * pr + pi * pi)
      hertz[k] = f
      level[k] = 10 * Math.log10(scale * w * w * vs + 1e-30)
      phase[k] = Math.atan2(vr, -vi) * DEGREES
      delay[k] = (dvr * vi - dvi * vr) / vs
      excursion[k] = (peak * speedOfCone) / w
      velocity[k] = voltageV * speedOfCone
      ohm[k] = 1 / Math.sqrt(is)
      angle[k] = Math.atan2(-ii, ir) * DEGREES
      current[k] = amps
      power[k] = amps * voltageV
      pressure[k] = voltageV * pressureIn
      speed[k] = (peak * pressureIn * Math.sqrt(ps)) / area
    }
    return [level, phase, delay, excursion, velocity, ohm, angle, current, power, pressure, speed, hertz]
  }
}

/** Two chambers with leaks; the rear port opens outside (parallel) or into the front chamber (series); fourteen curves. */
export function bandPass6ByHand(system: ResponseSystem, series: boolean): HandLoop {
  const { re, le, bl, sd, mms, rms, stiffness, scale, voltageV } = constants(system)
  const [c1, c2] = system.network.chambers.map(chamber => chamber.complianceM3PerPa) as [number, number]
  const [rear, leak1, front, leak2] = system.network.branches as [Branch, Branch, Branch, Branch]
  const [m1, m2] = [rear.massKgPerM4, front.massKgPerM4]
  const [g1, g2] = [1 / leak1.resistancePaSPerM3, 1 / leak2.resistancePaSPerM3]
  const [a1, a2] = system.ports.map(port => port.areaM2) as [number, number]
  const peak = Math.SQRT2 * voltageV
  return frequencies => {
    const points = frequencies.length
    const out = outputs(points, 14)
    const [level, phase, delay, excursion, velocity, ohm, angle] = out as [
      Float64Array,
      Float64Array,
      Float64Array,
      Float64Array,
      Float64Array,
      Float64Array,
      Float64Array
    ]
    const [current, power, pressure1, pressure2, speed1, speed2, hertz] = out.slice(7) as [
      Float64Array,
      Float64Array,
      Float64Array,
      Float64Array,
      Float64Array,
      Float64Array,
      Float64Array
    ]
    for (let k = 0; k < points; k++) {
      const f = frequencies[k] as number
      const w = 2 * Math.PI * f
      const y1 = -1 / (w * m1)
      const y2 = -1 / (w * m2)
      const dy1 = 1 / (w * w * m1)
      const dy2 = 1 / (w * w * m2)
      const zei = w * le
      const zmi = w * mms - stiffness / w
      const dzmi = mms + stiffness / (w * w)
      const dr = re * rms - zei * zmi + bl * bl
      const di = re * zmi + zei * rms
      const ddr = -le * zmi - zei * dzmi
      const ddi = le * rms + re * dzmi
      const ds = dr * dr + di * di
      const qr = dr / ds
      const qi = -di / ds
      const sr = qr * qr - qi * qi
      const si = 2 * qr * qi
      const dqr = si * ddi - sr * ddr
      const dqi = -(sr * ddi + si * ddr)
      const s2 = sd * sd
      const dvrr = s2 * (re * qr - zei * qi)
      const dvri = s2 * (re * qi + zei * qr)
      const ddvr = s2 * (-le * qi + re * dqr - zei * dqi)
      const ddvi = s2 * (le * qr + re * dqi + zei * dqr)
      const link = series ? y1 : 0
      const dlink = series ? dy1 : 0
      const ar = dvrr + g1
      const ai = dvri + w * c1 + y1
      const br = dvrr + g2
      const bi = dvri + w * c2 + y2 + link
      const mr = -dvrr
      const mi = -dvri - link
      const dar = ddvr
      const dai = ddvi + c1 + dy1
      const dbi = ddvi + c2 + dy2 + dlink
      const dmr = -ddvr
      const dmi = -ddvi - dlink
      const detR = ar * br - ai * bi - (mr * mr - mi * mi)
      const detI = ar * bi + ai * br - 2 * mr * mi
      const size = detR * detR + detI * detI
      const tr = detR / size
      const ti = -detI / size
      const jr = sd * bl * qr
      const ji = sd * bl * qi
      let nr = -(br * jr - bi * ji) - (mr * jr - mi * ji)
      let ni = -(br * ji + bi * jr) - (mr * ji + mi * jr)
      const p1r = nr * tr - ni * ti
      const p1i = nr * ti + ni * tr
      nr = ar * jr - ai * ji + (mr * jr - mi * ji)
      ni = ar * ji + ai * jr + (mr * ji + mi * jr)
      const p2r = nr * tr - ni * ti
      const p2i = nr * ti + ni * tr
      const djr = sd * bl * dqr
      const dji = sd * bl * dqi
      const e1r = -djr - (dar * p1r - dai * p1i) - (dmr * p2r - dmi * p2i)
      const e1i = -dji - (dar * p1i + dai * p1r) - (dmr * p2i + dmi * p2r)
      const e2r = djr - (dmr * p1r - dmi * p1i) - (dar * p2r - dbi * p2i)
      const e2i = dji - (dmr * p1i + dmi * p1r) - (dar * p2i + dbi * p2r)
      nr = br * e1r - bi * e1i - (mr * e2r - mi * e2i)
      ni = br * e1i + bi * e1r - (mr * e2i + mi * e2r)
      const d1r = nr * tr - ni * ti
      const d1i = nr * ti + ni * tr
      nr = ar * e2r - ai * e2i - (mr * e1r - mi * e1i)
      ni = ar * e2i + ai * e2r - (mr * e1i + mi * e1r)
      const d2r = nr * tr - ni * ti
      const d2i = nr * ti + ni * tr
      const hr = p2r - p1r
      const hi = p2i - p1i
      const fr = bl - sd * (re * hr - zei * hi)
      const fi = -sd * (re * hi + zei * hr)
      const ur = qr * fr - qi * fi
      const ui = qr * fi + qi * fr
      const gr = rms + bl * sd * hr
      const gi = zmi + bl * sd * hi
      const ir = qr * gr - qi * gi
      const ii = qr * gi + qi * gr
      const vr = w * (c1 * p1i + c2 * p2i)
      const vi = -w * (c1 * p1r + c2 * p2r)
      const dvr = c1 * p1i + c2 * p2i + w * (c1 * d1i + c2 * d2i)
      const dvi = -(c1 * p1r + c2 * p2r) - w * (c1 * d1r + c2 * d2r)
      const vs = vr * vr + vi * vi
      const is = ir * ir + ii * ii
      const amps = Math.sqrt(is) * voltageV
      const cone = Math.sqrt(ur * ur + ui * ui)
      const q1 = Math.sqrt(p1r * p1r + p1i * p1i)
      const q2 = Math.sqrt(p2r * p2r + p2i * p2i)
      hertz[k] = f
      level[k] = 10 * Math.log10(scale * w * w * vs + 1e-30)
      phase[k] = Math.atan2(vr, -vi) * DEGREES
      delay[k] = (dvr * vi - dvi * vr) / vs
      excursion[k] = (peak * cone) / w
      velocity[k] = voltageV * cone
      ohm[k] = 1 / Math.sqrt(is)
      angle[k] = Math.atan2(-ii, ir) * DEGREES
      current[k] = amps
      power[k] = amps * voltageV
      pressure1[k] = voltageV * q1
      pressure2[k] = voltageV * q2
      speed1[k] = ((series ? Math.sqrt(hr * hr + hi * hi) : q1) * peak * -y1) / a1
      speed2[k] = (peak * q2 * -y2) / a2
    }
    return out
  }
}

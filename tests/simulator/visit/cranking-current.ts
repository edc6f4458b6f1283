import type { Reading } from '@evenbore/contract'
import { chargeTempK, runCylinder } from './cylinder-run.ts'
import { leaksOf, showsNow } from './leaks.ts'
import { cylinderOf, sessionField, type Visit } from './visit.ts'

type CrankingCurrent = Extract<Reading, { test: 'cranking-current' }>

const SECONDS = 5
const RATE_HZ = 400
const HUMP_WIDTH_DEG = 42

/** Starter current while cranking with all plugs in: a hump for each compression, as high as the cylinder's pressure (shape from memory). */
export function recordCrankingCurrent(visit: Visit): CrankingCurrent {
  const { engine, random, session } = visit
  const order = engine.design.layout.firingOrder
  const speedRpm = session.speedRpm * 0.85
  const peaks = order.map((number) => {
    const cylinder = cylinderOf(visit, number)
    const shows = showsNow(visit, cylinder)
    const leaks = leaksOf(engine, cylinder, { wet: false, temperature: session.temperature, held: false, shows })
    const run = runCylinder(engine, cylinder, session, leaks, {
      speedRpm,
      strokes: 6,
      fill: 0.985 * engine.cause.chargeFill,
      chargeTempK: chargeTempK(session),
      oilM3: 0,
      leftInGaugePa: 0,
      shows: () => true,
    })
    return (run[run.length - 1] as number) / 1e6
  })
  const degPerSecond = speedRpm * 6
  const spacing = 720 / order.length
  const phase = random.between(0, 720)
  const humpAmps = random.between(55, 90)
  const count = Math.round(SECONDS * RATE_HZ)
  const seconds: number[] = []
  const amps: number[] = []
  for (let i = 0; i < count; i++) {
    const time = i / RATE_HZ
    const deg = phase + time * degPerSecond
    let value = 120 * (1 + 0.9 * Math.exp(-time / 0.12)) - 4 * time
    for (let k = 0; k < order.length; k++) {
      const away = ((((deg - k * spacing) % 720) + 1080) % 720) - 360
      if (Math.abs(away) < 3 * HUMP_WIDTH_DEG) value += humpAmps * (peaks[k] as number) * Math.exp(-0.5 * (away / HUMP_WIDTH_DEG) ** 2)
    }
    seconds.push(Number(time.toFixed(5)))
    amps.push(Number((value + random.normal(0, 2)).toFixed(2)))
  }
  const firstTop = ((720 - phase) % 720) / degPerSecond
  const known = random.chance(0.7)
  return {
    test: 'cranking-current',
    ...sessionField(visit),
    samples: { seconds, amps },
    ...(known ? { cylinderOneAt: Number((firstTop % SECONDS).toFixed(4)) } : {}),
  }
}

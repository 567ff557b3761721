// A product page: does the amplifier a visitor has fit this driver? Plain fetch; every figure and every caution is the service's own.

/** Where the service stands; a page of another origin needs CORS_ORIGIN set there. */
const service = new URLSearchParams(location.search).get('service') ?? 'http://localhost:3000'

const driver = { powerW: 350, coils: 1, coilOhm: 4 }
const amplifiers = [
  {
    name: 'Alder 700, one channel',
    ratings: [
      { loadOhm: 4, powerW: 420 },
      { loadOhm: 2, powerW: 700 }
    ],
    minimumOhm: 2,
    channels: 1
  },
  { name: 'Rowan 120, two channels', ratings: [{ loadOhm: 4, powerW: 60 }], minimumOhm: 4, channels: 2 }
]

const byId = id => document.getElementById(id)
byId('amplifier').replaceChildren(...amplifiers.map(({ name }, at) => new Option(name, String(at))))

/** A refusal says in words what is wrong, and where. */
async function ask(path, request) {
  const response = await fetch(service + path, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify(request)
  })
  const body = await response.json()
  if (!response.ok) throw new Error(body.errors?.[0]?.detail ?? body.detail)
  return body
}

/** A picture of a GET form needs no script of its own: its address is the request. */
function wiringAddress(driverCount, targetOhm) {
  const query = new URLSearchParams({
    driverCount,
    coilsPerDriver: driver.coils,
    coilOhm: driver.coilOhm,
    targetOhm,
    form: 'svg'
  })
  return `${service}/v1/coils/wiring?${query}`
}

function show({ best }, cautions) {
  byId('verdict').textContent =
    best === undefined
      ? 'No output of this amplifier is known to drive these drivers.'
      : `${best.loadOhm} Ω, ${best.verdict.replaceAll('-', ' ')}: ${best.advice}`
  // No caution is left out, least of all a stop.
  byId('cautions').replaceChildren(
    ...cautions.map(({ level, message }) => {
      const item = document.createElement('li')
      item.textContent = level === 'note' ? message : `${level}: ${message}`
      return item
    })
  )
  const picture = byId('wiring')
  picture.hidden = best === undefined
  if (best === undefined) return
  picture.src = wiringAddress(best.driversPerOutput, best.loadOhm)
  picture.alt = `How the coils are joined to ${best.loadOhm} Ω`
}

document.querySelector('form').addEventListener('submit', async event => {
  event.preventDefault()
  const driverCount = Number(byId('count').value)
  try {
    const { result, cautions } = await ask('/v1/amplifiers/matching', {
      amplifier: amplifiers[Number(byId('amplifier').value)],
      driver,
      driverCount
    })
    show(result, cautions)
  } catch (error) {
    show({}, [])
    byId('verdict').textContent = error.message
  }
})

/** Environment → buildApp → listen → close on a signal. */
import { buildApp } from './app.ts'

const app = await buildApp({ logger: { level: process.env.LOG_LEVEL ?? 'info' } })
await app.listen({ port: Number(process.env.PORT ?? 3000), host: process.env.HOST ?? '0.0.0.0' })

import type { AddressInfo } from 'node:net'
import { isLoopback, type Config } from '../config.ts'
import type { App } from '../platform/http/app.ts'

/**
 * Listens where the configuration says.
 * @returns scheme, host and port as this machine reaches them
 * @throws Error with one sentence where that port or address cannot be had
 */
export async function listen(app: App, config: Config): Promise<string> {
  try {
    await app.listen({ port: config.port, host: config.host })
  } catch (cause) {
    throw new Error(reason(cause as NodeJS.ErrnoException, config), { cause })
  }
  const { port } = app.server.address() as AddressInfo
  const host = config.host === '0.0.0.0' ? '127.0.0.1' : config.host === '::' ? '[::1]' : config.host.includes(':') ? `[${config.host}]` : config.host
  return `${config.certificate === undefined ? 'http' : 'https'}://${host}:${port}`
}

/** The address that people type. */
export function publicAddress(config: Config, address: string): string {
  if (config.publicUrl !== undefined) return config.publicUrl
  return isLoopback(config.host) ? address.replace('127.0.0.1', 'localhost') : address
}

function reason(error: NodeJS.ErrnoException, { host, port }: Config): string {
  if (error.code === 'EADDRINUSE') return `Port ${port} on ${host} is in use: stop what uses it, or set PORT to another one.`
  if (error.code === 'EACCES') return `Port ${port} may not be opened by this user: set PORT to 1024 or above.`
  if (error.code === 'EADDRNOTAVAIL' || error.code === 'ENOTFOUND') return `HOST is "${host}", which is no address of this machine.`
  return `The service cannot listen on ${host}:${port}: ${error.message}.`
}

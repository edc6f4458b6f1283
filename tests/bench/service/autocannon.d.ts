/** The part of autocannon that the bench uses; it brings no types of its own. */
declare module 'autocannon' {
  type Request = { method?: string; path?: string; body?: string; headers?: Record<string, string>; setupRequest?: (request: Request) => Request }
  type Options = { url: string; connections: number; duration: number; headers?: Record<string, string>; requests?: Request[] }
  type Result = { '2xx': number; non2xx: number; errors: number; timeouts: number; duration: number; latency: { p50: number; p99: number } }
  export default function autocannon(options: Options): Promise<Result>
}

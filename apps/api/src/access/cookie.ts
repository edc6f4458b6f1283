import type { Tokens } from '@evenbore/contract'
import type { FastifyReply, FastifyRequest } from 'fastify'
import type { Session } from './sessions.ts'

// The refresh token of a browser: out of reach of scripts, sent to the sign-in routes only, and never from another site.
const NAME = 'evenbore_refresh'
const PATH = '/v1/sign-in'

/** Answers a sign-in: the refresh token in the cookie, or in the body for programs that ask for that. */
export function answerSession(request: FastifyRequest, reply: FastifyReply, session: Session, inBody: boolean): Tokens {
  if (inBody) return { ...session.tokens, refreshToken: session.refreshToken }
  reply.header('set-cookie', cookie(request, session.refreshToken, session.refreshSeconds))
  return session.tokens
}

/** Forgets the cookie. */
export function clearSession(request: FastifyRequest, reply: FastifyReply): void {
  reply.header('set-cookie', cookie(request, '', 0))
}

/** The refresh token of the request's cookie. */
export function refreshTokenOf(request: FastifyRequest): string | undefined {
  const pair = (request.headers.cookie ?? '').split(/; */).find((part) => part.startsWith(`${NAME}=`))
  return pair?.slice(NAME.length + 1)
}

function cookie(request: FastifyRequest, value: string, seconds: number): string {
  return `${NAME}=${value}; Path=${PATH}; Max-Age=${seconds}; HttpOnly; SameSite=Strict${request.protocol === 'https' ? '; Secure' : ''}`
}

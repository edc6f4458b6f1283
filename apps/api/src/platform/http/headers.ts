import { createHash } from 'node:crypto'
import helmet from '@fastify/helmet'
import plugin from 'fastify-plugin'

/**
 * Security headers on every answer. Scripts come from our own address only; the pages' one inline script (their start) is allowed
 * by its hash, `pages` being the HTML that holds it.
 */
export const securityHeaders = plugin<{ pages: string | undefined; https: boolean }>(
  async (app, { pages, https }) => {
    await app.register(helmet, {
      contentSecurityPolicy: {
        useDefaults: false,
        directives: {
          defaultSrc: ["'none'"],
          scriptSrc: ["'self'", ...hashesOfInlineScripts(pages ?? '')],
          workerSrc: ["'self'"],
          styleSrc: ["'self'"],
          // Drawings place their parts by style attributes; a style element or a foreign sheet stays refused.
          styleSrcAttr: ["'unsafe-inline'"],
          imgSrc: ["'self'", 'data:', 'blob:'],
          fontSrc: ["'self'"],
          connectSrc: ["'self'"],
          manifestSrc: ["'self'"],
          frameAncestors: ["'none'"],
          baseUri: ["'none'"],
          formAction: ["'self'"],
        },
      },
      crossOriginEmbedderPolicy: false,
      referrerPolicy: { policy: 'no-referrer' },
      strictTransportSecurity: https ? { maxAge: 31_536_000 } : false,
      xDownloadOptions: false,
      xPermittedCrossDomainPolicies: false,
    })
  },
  { name: 'security-headers' },
)

function hashesOfInlineScripts(html: string): string[] {
  const scripts = html.matchAll(/<script(?![^>]*\bsrc=)[^>]*>([\s\S]*?)<\/script>/g)
  return [...scripts].map(([, text]) => `'sha256-${createHash('sha256').update(text ?? '').digest('base64')}'`)
}

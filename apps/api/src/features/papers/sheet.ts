import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { dirname, join } from 'node:path'
import PDFDocument from 'pdfkit'
import { printable } from './printable.ts'

const MM = 72 / 25.4
const MARGIN = 14 * MM
const FOOT = 8 * MM
const GAP = 7
const INK = '#000000'
const SOFT = '#444444'
const LINE = '#999999'
const FULL_SIZES = { small: 8, body: 9.5, lead: 11.5, code: 16 } as const
const STYLES = { regular: 'DejaVuSansCondensed.ttf', bold: 'DejaVuSansCondensed-Bold.ttf' } as const
type Style = keyof typeof STYLES

/** What stands above every sheet. */
export type Letterhead = { readonly garage: string; readonly title: string; readonly code: string; readonly about: readonly string[] }
/** A column of a table: its head, its share of the width, and whether it holds figures. */
export type Column = { readonly head: string; readonly share: number; readonly figures?: true }
export type Sheet = ReturnType<typeof openSheet>

let faces: Readonly<Record<Style, Buffer>> | undefined
/** The typeface (DejaVu, free, with Latin, Greek, Cyrillic, Hebrew and Arabic), read once. */
function typeface(): Readonly<Record<Style, Buffer>> {
  const folder = join(dirname(createRequire(import.meta.url).resolve('dejavu-fonts-ttf/package.json')), 'ttf')
  return (faces ??= { regular: readFileSync(join(folder, STYLES.regular)), bold: readFileSync(join(folder, STYLES.bold)) })
}

/** How tightly a sheet may be set so that it stays one, loosest first; the last is 7.4 points, still read without effort. */
export const DENSITIES = [1, 0.88, 0.78] as const

/**
 * Begins a sheet of A4 with its letterhead. What is put on it flows to further pages where one is not enough.
 * @param density 1, or less to set it tighter
 */
export function openSheet(head: Letterhead, language: string, density: number) {
  const doc = new PDFDocument({ size: 'A4', margins: { top: MARGIN, left: MARGIN, right: MARGIN, bottom: MARGIN + FOOT }, bufferPages: true, lang: language, displayTitle: true, info: { Title: `${head.title} ${head.code}`, Creator: 'Evenbore', Producer: 'Evenbore' } })
  const SIZES = { small: Math.max(6.8, FULL_SIZES.small * density), body: FULL_SIZES.body * density, lead: FULL_SIZES.lead * density, code: FULL_SIZES.code }
  const pieces: Buffer[] = []
  doc.on('data', (piece: Buffer) => pieces.push(piece))
  for (const [style, face] of Object.entries(typeface())) doc.registerFont(style, face)
  const width = doc.page.width - 2 * MARGIN
  const bottom = doc.page.height - MARGIN - FOOT
  const hasSign = (code: number) => (doc as unknown as { _font: { font: { hasGlyphForCodePoint(code: number): boolean } } })._font.font.hasGlyphForCodePoint(code)
  const clean = (text: string) => printable(text, hasSign)
  const set = (style: Style = 'regular', size: number = SIZES.body, colour = INK) => doc.font(style).fontSize(size).fillColor(colour)
  const room = (height: number) => { if (doc.y + height > bottom) doc.addPage() }

  function letterhead(): void {
    const half = width / 2 - GAP
    const top = doc.y
    set('bold', SIZES.lead).text(clean(head.garage), MARGIN, top, { width: half, height: 30, ellipsis: true })
    set().text(clean(head.title), MARGIN, doc.y, { width: half })
    const left = doc.y
    set('bold', SIZES.code).text(clean(head.code), MARGIN + width / 2, top, { width: width / 2, align: 'right' })
    for (const line of head.about) set().text(clean(line), MARGIN + width / 2, doc.y, { width: width / 2, align: 'right', height: 26, ellipsis: true })
    doc.y = Math.max(left, doc.y) + 4
    doc.moveTo(MARGIN, doc.y).lineTo(MARGIN + width, doc.y).lineWidth(1.5).strokeColor(INK).stroke()
    doc.y += GAP
  }
  letterhead()

  return {
    /** A paragraph. */
    text(text: string, { style = 'regular', small = false }: { readonly style?: Style; readonly small?: boolean } = {}): void {
      set(style, small ? SIZES.small : SIZES.body, small ? SOFT : INK).text(clean(text), MARGIN, doc.y, { width })
      doc.y += (small ? 2 : 4) * density
    },
    /** A heading, never alone at the foot of a page. */
    heading(text: string): void {
      room(46)
      doc.y += 4 * density
      set('bold', SIZES.lead).text(clean(text), MARGIN, doc.y, { width })
      doc.y += 2
    },
    list(items: readonly string[]): void {
      for (const item of items) {
        set()
        const top = doc.y
        doc.text('•', MARGIN, top, { width: 10 })
        doc.text(clean(item), MARGIN + 10, top, { width: width - 10 })
        doc.y += 2 * density
      }
    },
    /** A caution, framed: it stands where the hand is. */
    caution(label: string, text: string): void {
      set()
      const inner = width - 16
      const said = clean(`${label}: ${text}`)
      const height = doc.heightOfString(said, { width: inner }) + 10 * density
      room(height)
      const top = doc.y
      doc.rect(MARGIN, top, width, height).lineWidth(1).strokeColor(INK).stroke()
      doc.text(said, MARGIN + 8, top + 5 * density, { width: inner })
      doc.y = top + height + 4 * density
    },
    /** A table; a row is never torn. `struck` rows are those that no longer count. */
    table(columns: readonly Column[], rows: readonly { readonly cells: readonly string[]; readonly struck?: boolean; readonly strong?: boolean }[]): void {
      const shares = columns.reduce((sum, { share }) => sum + share, 0)
      const widths = columns.map(({ share }) => (width * share) / shares)
      const inside = (at: number) => widths[at]! - (at === widths.length - 1 ? 0 : GAP)
      const put = (cells: readonly string[], options: { readonly style?: Style; readonly size?: number; readonly colour?: string; readonly struck?: boolean | undefined }) => {
        set(options.style, options.size, options.colour)
        const said = cells.map(clean)
        const height = Math.max(...said.map((cell, at) => doc.heightOfString(cell || ' ', { width: inside(at) }))) + 5 * density * density
        room(Math.min(height, bottom - MARGIN))
        const top = doc.y
        let left = MARGIN
        for (const [at, cell] of said.entries()) {
          doc.text(cell, left, top + 2 * density, { width: inside(at), align: columns[at]!.figures ? 'right' : 'left', strike: options.struck === true && at === 0 })
          left += widths[at]!
        }
        doc.y = top + height
        doc.moveTo(MARGIN, doc.y).lineTo(MARGIN + width, doc.y).lineWidth(0.5).strokeColor(LINE).stroke()
      }
      put(columns.map(({ head: name }) => name), { size: SIZES.small, colour: SOFT })
      for (const { cells, struck, strong } of rows) put(cells, { struck, ...(strong ? { style: 'bold' as const } : {}) })
      doc.y += 4
    },
    /** Bars beside their names, the longest as wide as there is room; `mark` is the last in words. */
    bars(rows: readonly { readonly name: string; readonly part: number; readonly figure: string }[]): void {
      for (const { name, part, figure } of rows) {
        room(14 * density)
        const top = doc.y
        set().text(clean(name), MARGIN, top, { width: width * 0.38, height: 12 * density, ellipsis: true, lineBreak: false })
        doc.rect(MARGIN + width * 0.4, top + 2 * density, Math.max(0.5, width * 0.42 * Math.min(1, Math.max(0, part))), 7 * density).fill(INK)
        set().text(clean(figure), MARGIN + width * 0.84, top, { width: width * 0.16, align: 'right', lineBreak: false })
        doc.y = top + 13 * density
      }
      doc.y += 3
    },
    /** Lines to sign on. */
    signature(who: string, date: string): void {
      room(52 * density)
      const top = doc.y + 36 * density
      doc.lineWidth(0.5).strokeColor(INK)
      doc.moveTo(MARGIN, top).lineTo(MARGIN + width * 0.62, top).stroke()
      doc.moveTo(MARGIN + width * 0.68, top).lineTo(MARGIN + width, top).stroke()
      set('regular', SIZES.small).text(clean(who), MARGIN, top + 3, { width: width * 0.6, lineBreak: false })
      doc.text(clean(date), MARGIN + width * 0.68, top + 3, { width: width * 0.3, lineBreak: false })
      doc.y = top + 16
    },
    /** Numbers the pages and ends the document. */
    finish(foot: string, numbered: (page: number, of: number) => string): Promise<{ readonly document: Buffer; readonly pages: number }> {
      const { count } = doc.bufferedPageRange()
      for (let page = 0; page < count; page++) {
        doc.switchToPage(page)
        // Below the margin text would make a page of its own.
        doc.page.margins.bottom = 0
        const top = doc.page.height - MARGIN - SIZES.small
        set('regular', SIZES.small, SOFT).text(clean(foot), MARGIN, top, { width: width * 0.75, height: 10, ellipsis: true, lineBreak: false })
        doc.text(numbered(page + 1, count), MARGIN + width * 0.75, top, { width: width * 0.25, align: 'right', lineBreak: false })
      }
      return new Promise((resolve, reject) => {
        doc.once('end', () => resolve({ document: Buffer.concat(pieces), pages: count }))
        doc.once('error', reject)
        doc.end()
      })
    },
  }
}

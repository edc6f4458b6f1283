/**
 * A firing order as people write it: "1-3-4-2", "1, 3, 4, 2", "1342" up to nine cylinders. Nothing typed is an empty order.
 * Undefined where it does not name each cylinder once.
 */
export function parseFiringOrder(typed: string, cylinders: number): number[] | undefined {
  const text = typed.normalize('NFKC').trim()
  if (text === '') return []
  if (/[^\d\s,.;–-]/u.test(text)) return undefined
  const bare = /^\d+$/u.test(text) && cylinders < 10 && cylinders > 1
  const numbers = (bare ? [...text] : text.split(/[^\d]+/u).filter(Boolean)).map(Number)
  const each = new Set(numbers)
  return numbers.length === cylinders && each.size === cylinders && numbers.every((number) => number >= 1 && number <= cylinders) ? numbers : undefined
}

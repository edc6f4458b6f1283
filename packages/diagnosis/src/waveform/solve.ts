/**
 * Solves a small symmetric positive definite system by Gauss-Jordan elimination with pivoting.
 * @returns the solution and the diagonal of the inverse, or null where the system is singular
 */
export function solve(matrix: readonly Float64Array[], right: Float64Array): { x: Float64Array; inverseDiagonal: Float64Array } | null {
  const size = right.length
  const rows = matrix.map((row, i) => {
    const wide = new Float64Array(2 * size + 1)
    wide.set(row)
    wide[size + i] = 1
    wide[2 * size] = right[i]!
    return wide
  })
  const largest = Math.max(...matrix.map((row, i) => Math.abs(row[i]!)))
  for (let column = 0; column < size; column++) {
    let pivot = column
    for (let i = column + 1; i < size; i++) if (Math.abs(rows[i]![column]!) > Math.abs(rows[pivot]![column]!)) pivot = i
    if (!(Math.abs(rows[pivot]![column]!) > 1e-9 * largest)) return null
    ;[rows[column], rows[pivot]] = [rows[pivot]!, rows[column]!]
    const own = rows[column]!
    const scale = own[column]!
    for (let j = column; j <= 2 * size; j++) own[j]! /= scale
    for (let i = 0; i < size; i++) {
      const factor = rows[i]![column]!
      if (i === column || factor === 0) continue
      for (let j = column; j <= 2 * size; j++) rows[i]![j]! -= factor * own[j]!
    }
  }
  return { x: Float64Array.from(rows, (row) => row[2 * size]!), inverseDiagonal: Float64Array.from(rows, (row, i) => row[size + i]!) }
}

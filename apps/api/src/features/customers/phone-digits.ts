/** The digits of a phone number alone, as they are searched; null where there are none. */
export function phoneDigits(phone: string | null | undefined): string | null {
  const digits = (phone ?? '').replace(/\D/g, '')
  return digits === '' ? null : digits
}

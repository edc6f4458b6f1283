import type { Customer, NewCustomer } from '@evenbore/contract'

/** A customer as typed. */
export interface CustomerForm {
  name: string
  phone: string
  email: string
  address: string
  note: string
}
export const emptyCustomer: CustomerForm = { name: '', phone: '', email: '', address: '', note: '' }

/** What goes on the wire: empty fields are null. */
export function customerBody({ name, phone, email, address, note }: CustomerForm): NewCustomer {
  return { name: name.trim(), phone: phone.trim() || null, email: email.trim() || null, address: address.trim() || null, note: note.trim() || null }
}

export function customerForm(customer: Customer): CustomerForm {
  return { name: customer.name, phone: customer.phone ?? '', email: customer.email ?? '', address: customer.address ?? '', note: customer.note ?? '' }
}

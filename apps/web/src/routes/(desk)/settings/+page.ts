import { redirect } from '@sveltejs/kit'

// the first room is the one that everybody has
export const load = () => redirect(307, '/settings/me')

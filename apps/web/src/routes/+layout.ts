// A single page app: nothing is rendered on the server, so a tablet can open it without one.
export const ssr = false
export const prerender = false

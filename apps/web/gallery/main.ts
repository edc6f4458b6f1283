import '@fontsource-variable/atkinson-hyperlegible-next/wght.css'
import '../src/lib/styles/tokens.css'
import '../src/lib/styles/base.css'
import '../src/lib/styles/print.css'
import { mount } from 'svelte'
import Gallery from './Gallery.svelte'

const query = new URLSearchParams(location.search)
const theme = query.get('theme')
if (theme) document.documentElement.dataset['theme'] = theme
mount(Gallery, { target: document.getElementById('app')! })

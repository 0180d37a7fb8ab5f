/** The real chart on a bare page, to be looked at: the query chooses the child, the order, the size. */
import '@fontsource-variable/source-sans-3/wght.css';
import '@fontsource-variable/source-serif-4/wght.css';
import './gallery.css';
import { mount } from 'svelte';
import Gallery from './Gallery.svelte';

const target = document.querySelector('main');
if (!target) throw new Error('the page has no main');
mount(Gallery, { target });

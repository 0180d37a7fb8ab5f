/** Reads files apart from the page. */
import { readFile } from './files.ts';
import { serve } from './serve.ts';

serve(readFile);

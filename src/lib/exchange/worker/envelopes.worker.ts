/** Opens and closes encrypted files apart from the page: a passphrase is stretched for a second or more. */
import { turn } from './turn.ts';
import { serve } from './serve.ts';

serve(turn);

/** English for the limits from which something is discussed or watched: it loads with the page that says them. */

export const THRESHOLDS_NOTE =
  'To be discussed: persisting or missing with a share of 0.9 or more, obligatory, returned, lost, or a marked difference between the sides. Persisting or missing is watched with a share over 0.5. These limits are our choice. Persisting or missing is watched at most where healthy infants were counted who answer so at this age, where not eliciting the reflex tells little, on fewer than two voices or on memory alone, where a missing response was tried once or in a state that was not recorded, and where a persisting one was seen in a crying infant alone. Sources that copy one another are one voice.';

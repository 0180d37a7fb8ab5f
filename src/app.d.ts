/** Whether this is the build that may ask a FHIR server (`npm run build:connected`). */
declare const __CONNECTED__: boolean;

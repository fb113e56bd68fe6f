/** Terms of the trade, for those who put plans into words. */
export { DIALECTS, type Dialect, inDialect } from '../fit/terms.ts';

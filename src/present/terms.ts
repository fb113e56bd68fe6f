/** Terms of the trade, for those who put plans into words. */
export { DIALECTS, type Dialect, inDialect, namesIn } from '../fit/terms.ts';

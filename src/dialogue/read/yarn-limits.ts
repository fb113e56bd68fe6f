/** What is no likely amount of yarn, however it was typed. */

/** Metres, grams or balls beyond which there is a slip of the hand. */
export const MOST_YARN = 50_000;

/** Metres on one cone: a kilogram of single yarn of Nm 200, finer than any that is knitted by hand. */
export const MOST_ON_CONE = 200_000;

/** '2,000' and '2.000' of yarn are thousands, yet a decimal can be typed so too: the person decides. */
export const BROKEN = /^\d{1,3}[.,]\d{3}$/;

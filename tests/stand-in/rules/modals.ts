/** Modals (pages `interactions/receiving-and-responding` and `components/reference`). */
import { isObject, numberIn, objectsIn, textIn } from '../json.ts';
import { choosable, componentId, customId, distinctOptions, selects } from './controls.ts';
import { both, byType, type Fields, form, list, oneOf, text, truth, whole } from './fields.ts';
import { textDisplay } from './layout.ts';
import type { Rule } from './spot.ts';
import { uniqueIds } from './tree.ts';

const lengthsAgree: Rule = (spot) => {
  if (!isObject(spot.value)) return;
  const least = numberIn(spot.value, 'min_length') ?? 0;
  const most = numberIn(spot.value, 'max_length') ?? 4000;
  if (least > most)
    spot.wrong('minimum-over-maximum', `min_length ${least} is more than max_length ${most}.`);
  const { length } = textIn(spot.value, 'value');
  if (length > 0 && (length < least || length > most)) {
    spot
      .at('value')
      .wrong('value-out-of-bounds', `The value's ${length} characters are not ${least} to ${most}.`);
  }
};

function textInput(inRow: Fields = {}): Rule {
  return both(
    form(
      { type: oneOf(4), custom_id: customId, style: oneOf(1, 2), ...inRow },
      {
        id: componentId,
        min_length: whole(0, 4000),
        max_length: whole(1, 4000),
        required: truth,
        value: text(0, 4000),
        placeholder: text(0, 100),
      },
    ),
    lengthsAgree,
  );
}

/** `min_values` 0 goes only with `required: false`. */
const optionalIsNotRequired: Rule = (spot) => {
  if (!isObject(spot.value) || spot.value.min_values !== 0 || spot.value.required === false) return;
  spot.wrong('optional-needs-not-required', 'min_values 0 needs required: false.');
};

const fileUpload = both(
  form(
    { type: oneOf(19), custom_id: customId },
    {
      id: componentId,
      min_values: whole(0, 10),
      max_values: whole(1, 10),
      required: truth,
      file_types: list(text(1, 100), 0, 10),
    },
  ),
  choosable,
  optionalIsNotRequired,
);

const groupOption = form(
  { label: text(1, 100), value: text(1, 100) },
  { description: text(1, 100), default: truth },
);

const radioGroup = both(
  form(
    {
      type: oneOf(21),
      custom_id: customId,
      options: both(list(groupOption, 2, 10), distinctOptions),
    },
    { id: componentId, required: truth },
  ),
  (spot) => {
    const chosen = isObject(spot.value)
      ? objectsIn(spot.value, 'options').filter((option) => option.default === true).length
      : 0;
    if (chosen > 1) spot.wrong('defaults-out-of-bounds', `${chosen} options are chosen at first.`);
  },
);

const checkboxGroup = both(
  form(
    {
      type: oneOf(22),
      custom_id: customId,
      options: both(list(groupOption, 1, 10), distinctOptions),
    },
    { id: componentId, min_values: whole(0, 10), max_values: whole(1, 10), required: truth },
  ),
  checkboxCounts,
  optionalIsNotRequired,
);

/** Unlike in a select, the most that may be ticked is every box unless it is said otherwise. */
function checkboxCounts(spot: Parameters<Rule>[0]): void {
  if (!isObject(spot.value)) return;
  const boxes = objectsIn(spot.value, 'options').length;
  const most = numberIn(spot.value, 'max_values') ?? boxes;
  const least = numberIn(spot.value, 'min_values') ?? 1;
  if (most > boxes) spot.wrong('more-than-options', `${most} choices asked of ${boxes} options.`);
  if (least > most)
    spot.wrong('minimum-over-maximum', `min_values ${least} is more than max_values ${most}.`);
}

const checkbox = form({ type: oneOf(23), custom_id: customId }, { id: componentId, default: truth });

const chosenInModal = Object.fromEntries(
  Object.entries(selects('modal')).map(([type, rule]) => [type, both(rule, optionalIsNotRequired)]),
);

const label = form(
  {
    type: oneOf(18),
    label: text(1, 45),
    component: byType(
      {
        4: textInput(),
        ...chosenInModal,
        19: fileUpload,
        21: radioGroup,
        22: checkboxGroup,
        23: checkbox,
      },
      'a label',
    ),
  },
  { id: componentId, description: text(1, 100) },
);

/** A text input directly in a row bears its own label; no longer recommended, still taken. */
const inputRow = form(
  {
    type: oneOf(1),
    components: list(byType({ 4: textInput({ label: text(1, 45) }) }, 'a row of a modal'), 1, 1),
  },
  { id: componentId },
);

export const modal: Rule = form({
  custom_id: customId,
  title: text(1, 45),
  components: both(list(byType({ 1: inputRow, 10: textDisplay, 18: label }, 'a modal'), 1, 5), uniqueIds),
});

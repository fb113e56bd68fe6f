/** The form in which an answer is typed. One answer a form, so that one closed by mistake loses nothing. */
import {
  type APIModalInteractionResponseCallbackData,
  ComponentType,
  type ModalSubmitInteraction,
  TextInputStyle,
} from 'discord.js';
import type { Question } from '../../flow/schema.ts';
import { makeId } from './custom-id.ts';
import { FORM_HINT, FORM_LABEL, FORM_TITLE } from './limits.ts';
import { asTyped, atMost } from './typed.ts';

const FIELD = 'answer';
/** Longer than any answer that is heard. */
const MOST_TYPED = 1000;

/** Needs nothing but the question, so that it can open at once. Undefined: a question of an older version of the flow. */
export function answerForm(
  session: string,
  id: string,
  question: Question | undefined,
): APIModalInteractionResponseCallbackData {
  const lines = question?.kind === 'sizes' || question?.kind === 'gauge';
  return {
    custom_id: makeId('form', session, id),
    title: atMost('Your answer', FORM_TITLE),
    components: [
      ...(question === undefined
        ? []
        : [{ type: ComponentType.TextDisplay as const, content: asTyped(question.ask) }]),
      {
        type: ComponentType.Label,
        label: atMost(question?.short ?? 'Your answer', FORM_LABEL),
        description: atMost(
          question === undefined ? 'As you would say it.' : `For example: ${question.example}`,
          FORM_HINT,
        ),
        component: {
          type: ComponentType.TextInput,
          custom_id: FIELD,
          style: lines ? TextInputStyle.Paragraph : TextInputStyle.Short,
          max_length: MOST_TYPED,
          required: true,
        },
      },
    ],
  };
}

export function typedIn(form: ModalSubmitInteraction): string {
  return form.fields.getTextInputValue(FIELD);
}

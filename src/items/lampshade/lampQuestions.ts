/** Asked of every shade whose card says nothing of its fitting. */
export const FITTING_UNKNOWN =
  "How does the shade sit: on a table or floor lamp, hung, or clipped? The fitting of its ring is not known.";

/** Asked of every shade: what keeps cloth from a hot lamp is not ours to say. */
export const MOST_THE_LAMP_DRAWS =
  "What is the most that the lamp may draw, and how far must cloth stay from it? The lamp's maker says both.";

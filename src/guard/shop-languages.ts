/**
 * The languages of shops (BCP 47 subtags) that a page can be told to speak, each with a lexicon to bring in. The list stands
 * by itself: the worker needs the names and not the words.
 */
export const shopLanguages: readonly string[] =
  'ar bg cs da de el en es et fa fi fr ga he hi hr hu id is it ja ko lt lv mt nb nl pl pt ro ru sk sl sv th tr uk vi zh'.split(
    ' ',
  )

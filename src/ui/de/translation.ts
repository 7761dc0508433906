/** The same texts in another language: each key, the same data put in, any sentence out. */
export type Translation<Text> = Text extends string
	? string
	: Text extends (...data: infer Data) => infer Sentence
		? (...data: Data) => Translation<Sentence>
		: Text extends readonly (infer Item)[]
			? readonly Translation<Item>[]
			: Text extends object
				? { readonly [Key in keyof Text]: Translation<Text[Key]> }
				: Text;

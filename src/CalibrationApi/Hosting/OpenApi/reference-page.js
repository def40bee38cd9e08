// What is typed into the filter is looked for in the group, path, name and summary of each operation, word by word.
const OperationFilter = () => ({
  fn: {
    opsFilter: (groups, phrase) => {
      const words = phrase.toLowerCase().split(/\s+/).filter(word => word !== "");
      const told = (name, operation) =>
        [name, operation.get("method"), operation.get("path"), operation.getIn(["operation", "operationId"]), operation.getIn(["operation", "summary"])]
          .join(" ")
          .toLowerCase();
      return groups
        .map((group, name) => group.update("operations", all => all.filter(one => words.every(word => told(name, one).includes(word)))))
        .filter(group => group.get("operations").size > 0);
    },
  },
});

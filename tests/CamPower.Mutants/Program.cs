using System;
using CamPower.Mutants;

if (args is ["worker", .. string[] mutant]) return Worker.Run(mutant);
try
{
    return Trial.Run(Arguments.Parse(args));
}
catch (InvalidOperationException fault)
{
    Console.Error.WriteLine(fault.Message);
    return 2;
}
